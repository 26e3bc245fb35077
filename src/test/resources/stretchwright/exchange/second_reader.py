"""Reads DXF files with ezdxf and tells, line by line, what is in them; for SecondReaderTest."""
import sys

import ezdxf


def line(e):
    kind = e.dxftype()
    if kind == "POLYLINE":
        points = [v.dxf.location for v in e.vertices]
    elif kind == "LINE":
        points = [e.dxf.start, e.dxf.end]
    elif kind == "POINT":
        points = [e.dxf.location]
    else:
        points = [e.dxf.insert]
    closed = " closed" if kind == "POLYLINE" and e.is_closed else ""
    at = "".join(f" {p[0] + 0.0:.3f} {p[1] + 0.0:.3f}" for p in points)
    return f"{kind} {e.dxf.layer}{closed}{at}"


for name in sys.argv[1:]:
    doc = ezdxf.readfile(name)
    print("FILE", doc.dxfversion, doc.header.get("$INSUNITS"), len(doc.audit().errors))
    print("LAYERS", " ".join(sorted(layer.dxf.name for layer in doc.layers)))
    doc = ezdxf.readfile(name)
    for block in doc.blocks:
        if not block.name.startswith("*"):
            print("BLOCK", block.name)
            for e in block:
                print(line(e))
    print("ENTITIES")
    for e in doc.modelspace():
        print(line(e))
