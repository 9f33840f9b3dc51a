"""Writes the drawings that the tests read, with libraries of another language:
ezdxf 1.4.5, svgwrite 1.4.3, svgpathtools 1.8.0.

    python3 make.py

The figure is one of these everywhere, in mm, y upwards:
- counter: 2150 by 640, its right end a half circle of 320;
- tray: 600 by 400, its corners rounded by 50, 40, 30 and 20 from the lower left round by the right.
"""

import math

import ezdxf
import svgpathtools
import svgwrite
from ezdxf import units
from ezdxf.math import ConstructionArc

TRAY = [(0, 0, 50), (600, 0, 40), (600, 400, 30), (0, 400, 20)]


def tray_with_bulges():
    """Vertices (x, y, bulge) of the tray."""
    quarter = math.tan(math.radians(90) / 4)
    (x0, y0, a), (x1, _, b), (_, y2, c), (_, _, d) = TRAY
    return [
        (x0 + a, y0, 0), (x1 - b, y0, quarter), (x1, y0 + b, 0), (x1, y2 - c, quarter),
        (x1 - c, y2, 0), (x0 + d, y2, quarter), (x0, y2 - d, 0), (x0, y0 + a, quarter),
    ]


def dxf(name, unit, draw):
    drawing = ezdxf.new("R2010")
    drawing.units = unit
    draw(drawing.modelspace())
    drawing.saveas(name)


def lines_and_arcs(space):
    """The counter in inches, as loose lines and an arc in no order, drawn here and there."""
    k = 1 / 25.4
    space.add_line((100 * k, 100 * k), (1930 * k, 100 * k), dxfattribs={"layer": "cut"})
    space.add_line((100 * k, 740 * k), (100 * k, 100 * k), dxfattribs={"layer": "cut"})
    space.add_arc((1930 * k, 420 * k), 320 * k, -90, 90, dxfattribs={"layer": "cut"})
    space.add_line((100 * k, 740 * k), (1930 * k, 740 * k), dxfattribs={"layer": "cut"})
    space.add_circle((800 * k, 420 * k), 150 * k, dxfattribs={"layer": "bowl"})


def chords(space):
    """The tray as a plain polyline of short chords."""
    points = []
    corners = [(50, 50, 180), (560, 40, 270), (570, 370, 0), (20, 380, 90)]
    for (x, y, start), (_, _, radius) in zip(corners, TRAY):
        arc = ConstructionArc((x, y), radius, start, start + 90)
        points += [(p.x, p.y) for p in arc.vertices(arc.angles(16))]
    space.add_lwpolyline(points, close=True)


def svg_shapes(name):
    """Basic shapes under transformations: the tray's likeness, a bowl, a slanted copy."""
    drawing = svgwrite.Drawing(name, size=("700mm", "500mm"), viewBox="0 0 70 50", profile="full")
    group = drawing.g(id="sheet", transform="translate(5,5) scale(0.1)")
    group.add(drawing.rect((0, 0), (600, 400), rx=30, ry=30, id="tray"))
    group.add(drawing.ellipse((300, 200), (120, 80), id="bowl"))
    group.add(drawing.circle((150, 200), 17.5, id="tap"))
    group.add(drawing.polygon([(0, 0), (200, 0), (100, 100)], id="wedge", transform="rotate(90)"))
    group.add(drawing.line((0, 450), (480, 450), id="tape-1"))
    group.add(drawing.line((650, 0), (650, 240), id="tape-2"))
    drawing.add(group)
    drawing.save(pretty=True)


def svg_path(name):
    """The counter as a path of Bézier curves (a half circle in two), upside down as SVG has it."""
    k = 4 / 3 * math.tan(math.radians(90) / 4) * 320
    at = lambda x, y: complex(100 + x, 1000 - y)
    path = svgpathtools.Path(
        svgpathtools.Line(at(0, 0), at(1830, 0)),
        svgpathtools.CubicBezier(at(1830, 0), at(1830 + k, 0), at(2150, 320 - k), at(2150, 320)),
        svgpathtools.CubicBezier(at(2150, 320), at(2150, 320 + k), at(1830 + k, 640), at(1830, 640)),
        svgpathtools.Line(at(1830, 640), at(0, 640)),
        svgpathtools.Line(at(0, 640), at(0, 0)),
    )
    attributes = [{"id": "counter", "fill": "none", "stroke": "black"}]
    svgpathtools.wsvg([path], attributes=attributes, filename=name,
                      svg_attributes={"width": "2400mm", "height": "1200mm", "viewBox": "0 0 2400 1200"})


dxf("tray.dxf", units.MM, lambda space: space.add_lwpolyline(tray_with_bulges(), format="xyb", close=True))
dxf("counter-inches.dxf", units.IN, lines_and_arcs)
dxf("chords.dxf", 0, chords)
dxf("spline.dxf", units.MM, lambda space: space.add_spline([(0, 0), (100, 50), (200, 0)]))
svg_shapes("shapes.svg")
svg_path("counter.svg")
