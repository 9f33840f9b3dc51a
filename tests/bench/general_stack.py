#!/usr/bin/env python3
"""The tea counter with general libraries, as a measure of speed: shapely for the geometry, reportlab for
the pages. It does a part of what the program does (a fixed place, two trims, one curve, weights, eight
plain pages) and is timed as a whole process:

    python3 tests/bench/general_stack.py examples/tea-counter.toml out.pdf

Needs Python 3.11 with `shapely` and `reportlab`. It checks nothing and is part of no test.
"""
import math
import sys
import tomllib

from reportlab.lib.pagesizes import A4
from reportlab.lib.units import mm
from reportlab.pdfgen import canvas
from shapely.affinity import translate
from shapely.geometry import LineString, Point, Polygon, box
from shapely.ops import unary_union

KEPT = 1.0  # allowance on a polished edge, mm
THROUGH = 3.0


def half_length(diameter, depth, z):
    """Half the length of the cut of a sunk disc at a depth."""
    radius = diameter / 2
    return math.sqrt(max(0.0, radius**2 - (radius - (depth - z)) ** 2))


def rounded_top(length, depth, radius):
    """A rectangle with its right end rounded to a half circle, arcs as 256 chords."""
    arc = [
        (length - radius + radius * math.cos(a), depth / 2 + radius * math.sin(a))
        for a in (math.pi * (i / 256 - 0.5) for i in range(257))
    ]
    return Polygon([(0, 0), *arc, (0, depth)])


def plan(job):
    slab_l, slab_d = job["slab"]["rectangle"]
    length, depth = job["top"]["rectangle"]
    radius = job["top"]["round"]["2"]
    disc = job["disc"][0]
    readings = job["stone"]["thickness"]
    full = max(readings) + THROUGH
    slab = box(0, 0, slab_l, slab_d)
    flaws = [LineString(f["line"]).buffer(f["clear"]) for f in job["slab"].get("flaw", [])]
    top = rounded_top(length, depth, radius)
    places = []
    for dx in range(0, int(slab_l - length) + 1, 10):
        for dy in range(0, int(slab_d - depth) + 1, 10):
            moved = translate(top, dx, dy)
            if slab.covers(moved) and not any(moved.intersects(f) for f in flaws):
                places.append((dx + dy, moved))
    top = min(places, key=lambda p: p[0])[1]
    centre = (length - radius, depth / 2)
    at_face, at_back = (half_length(disc["diameter"], full, z) for z in (0.0, max(readings)))
    step = min(2 * math.acos((radius + KEPT) / (radius + KEPT + 0.5)), 2 * math.atan(at_back / (radius + KEPT)))
    count = math.ceil(math.pi / step)
    stations = []
    for i in range(count + 1):
        angle = -math.pi / 2 + math.pi * i / count
        out = radius + KEPT + disc["kerf"] / 2
        at = Point(centre[0] + out * math.cos(angle), centre[1] + out * math.sin(angle))
        along = (-math.sin(angle) * at_face, math.cos(angle) * at_face)
        slot = LineString([(at.x - along[0], at.y - along[1]), (at.x + along[0], at.y + along[1])])
        stations.append((i + 1, at, slot.buffer(disc["kerf"] / 2, cap_style="flat")))
    trim = box(length + 60, 0, length + 60 + disc["kerf"], slab_d)
    back = box(0, depth + KEPT, slab_l, depth + KEPT + disc["kerf"])
    kerf = unary_union([trim, back, *(s for _, _, s in stations)])
    waste = slab.difference(unary_union([top.buffer(KEPT), kerf]))
    pieces = list(getattr(waste, "geoms", [waste]))
    mean = sum(readings) / len(readings)
    weigh = lambda area: area * mean * 2900e-9
    return {
        "title": job["job"]["title"],
        "slab": slab,
        "top": top,
        "stations": stations,
        "pieces": [(p, weigh(p.area), p.centroid) for p in pieces],
        "kg": weigh(top.area),
        "silica_g": weigh(kerf.area) * 1000 * 0.05,
    }


def ring(page, polygon, scale, at):
    path = page.beginPath()
    for i, (x, y) in enumerate(polygon.exterior.coords):
        (path.moveTo if i == 0 else path.lineTo)(at[0] + x * scale, at[1] + y * scale)
    path.close()
    page.drawPath(path)


def sheet(found, name):
    page = canvas.Canvas(name, pagesize=A4)
    for number in range(1, 9):
        page.setFont("Helvetica-Bold", 12)
        page.drawString(15 * mm, 282 * mm, f"{found['title']}, page {number} of 8")
        scale, at = 180 * mm / 2640, (15 * mm, 200 * mm)
        ring(page, found["slab"], scale, at)
        ring(page, found["top"], scale, at)
        for _, _, slot in found["stations"]:
            ring(page, slot, scale, at)
        page.setFont("Helvetica", 9)
        line = 190 * mm
        for station, where, _ in found["stations"]:
            page.drawString(15 * mm, line, f"{station}: {where.x:.0f} mm, {where.y:.0f} mm")
            line -= 4.5 * mm
        for piece, kg, middle in found["pieces"]:
            page.drawString(110 * mm, line + 100, f"{kg:.1f} kg at {middle.x:.0f}, {middle.y:.0f} mm")
            line -= 4.5 * mm
        page.showPage()
    page.save()


if __name__ == "__main__":
    with open(sys.argv[1], "rb") as file:
        sheet(plan(tomllib.load(file)), sys.argv[2])
