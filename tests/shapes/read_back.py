"""Reads drawings of a job at true size back with ezdxf and svgpathtools.

    read_back.py PLAN.json DRAWING.dxf DRAWING.svg

The area of the top without its openings must be the plan's to a millionth, the file in millimetres,
and without faults for the reader.
"""

import json
import math
import sys

import ezdxf
import svgpathtools


def ring(points):
    """Area of a closed polyline of lines and arcs: (x, y, bulge), mm²."""
    total = 0.0
    for (x1, y1, bulge), (x2, y2, _) in zip(points, points[1:] + points[:1]):
        total += (x1 * y2 - x2 * y1) / 2
        if bulge:
            sweep = 4 * math.atan(bulge)
            radius = math.hypot(x2 - x1, y2 - y1) / 2 / math.sin(sweep / 2)
            total += radius**2 * (sweep - math.sin(sweep)) / 2
    return abs(total)


def of_dxf(path):
    drawing = ezdxf.readfile(path)
    faults = drawing.audit()
    assert not faults.has_errors, [str(e) for e in faults.errors]
    assert drawing.header["$INSUNITS"] == 4, "not in millimetres"
    sums = {}
    for line in drawing.modelspace().query("LWPOLYLINE"):
        if line.closed:
            area = ring(list(line.get_points("xyb")))
            sums[line.dxf.layer] = sums.get(line.dxf.layer, 0.0) + area
    return sums


def of_svg(path):
    paths, attributes = svgpathtools.svg2paths(path)
    sums = {}
    for shape, attribute in zip(paths, attributes):
        name = attribute["id"]
        if name != "top-outline" and not name.startswith("opening-"):
            continue
        points = []
        for piece in shape:
            bulge = 0.0
            if isinstance(piece, svgpathtools.Arc):
                bulge = math.tan(math.radians(piece.delta) / 4)
            points.append((piece.start.real, piece.start.imag, bulge))
        layer = "top" if name == "top-outline" else "openings"
        sums[layer] = sums.get(layer, 0.0) + ring(points)
    return sums


def main(plan, dxf, svg):
    wanted = json.load(open(plan))["top"]["area_mm2"]
    for name, sums in ((dxf, of_dxf(dxf)), (svg, of_svg(svg))):
        found = sums["top"] - sums.get("openings", 0.0)
        off = abs(found / wanted - 1)
        assert off < 1e-6, f"{name}: {found} mm², the plan has {wanted}"
        print(f"{name}: off by {off:.1e}")


main(*sys.argv[1:])
