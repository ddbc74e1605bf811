"""Reads DXF files with an independent library and prints what is in them as JSON.

    python3 read_dxf.py FILE...

For each file: version, units, every fault and every repair of the strict and of the forgiving
reader, the layers, and for each layer the areas of its closed polylines, the radii of its circles,
its lines, points and texts. Areas are those of true arcs.
"""

import json
import sys

import ezdxf
from ezdxf import recover
from ezdxf.lldxf.encoding import decode_dxf_unicode
from ezdxf.math import Vec2, area, bulge_to_arc


def ring_area(points):
    """Area of a closed ring of (x, y, bulge)."""
    corners = [Vec2(x, y) for x, y, _ in points]
    total = signed_area(corners)
    for i, (x, y, bulge) in enumerate(points):
        if bulge:
            end = points[(i + 1) % len(points)]
            _, start_angle, end_angle, radius = bulge_to_arc((x, y), end[:2], bulge)
            total += segment(radius, start_angle, end_angle) * (1 if bulge > 0 else -1)
    return total


def signed_area(corners):
    size = area(corners)
    cross = sum(a.x * b.y - b.x * a.y for a, b in zip(corners, corners[1:] + corners[:1]))
    return size if cross > 0 else -size


def segment(radius, start_angle, end_angle):
    from math import pi, sin

    angle = (end_angle - start_angle) % (2 * pi)
    return radius * radius * (angle - sin(angle)) / 2


def rings(entity):
    if entity.dxftype() == "LWPOLYLINE":
        return list(entity.get_points("xyb")), entity.closed
    points = [(*v.dxf.location.vec2, v.dxf.get("bulge", 0)) for v in entity.vertices]
    return points, entity.is_closed


def read(path):
    strict = ezdxf.readfile(path)
    audit = strict.audit()
    doc, forgiving = recover.readfile(path)
    faults = [f"{e.code}: {e.message}" for a in (audit, forgiving) for e in a.errors]
    repairs = [f"{e.code}: {e.message}" for a in (audit, forgiving) for e in a.fixes]
    # The library adds the layer Defpoints to whatever it reads.
    names = [layer.dxf.name for layer in strict.layers]
    layers = {name: new_layer() for name in names if name != "Defpoints"}
    for entity in strict.modelspace():
        layer = layers.setdefault(entity.dxf.layer, new_layer())
        kind = entity.dxftype()
        if kind in ("LWPOLYLINE", "POLYLINE"):
            points, closed = rings(entity)
            layer["areas" if closed else "open"].append(ring_area(points))
        elif kind == "CIRCLE":
            layer["radii"].append(entity.dxf.radius)
        elif kind == "TEXT":
            layer["texts"].append(decode_dxf_unicode(entity.plain_text()))
        else:
            layer["others"].append(kind)
    return {
        "version": strict.dxfversion,
        "units": strict.header.get("$INSUNITS", None),
        "measurement": strict.header.get("$MEASUREMENT", None),
        "low": list(strict.header["$EXTMIN"]),
        "high": list(strict.header["$EXTMAX"]),
        "faults": faults,
        "repairs": repairs,
        "layers": layers,
    }


def new_layer():
    return {"areas": [], "open": [], "radii": [], "texts": [], "others": []}


print(json.dumps([read(path) for path in sys.argv[1:]]))
