#!/bin/bash
# Reads every ring of a folder, NAME.stl, NAME.dxf and NAME.svg, with programs of others: ADMesh the
# solid, ezdxf the drawing for cutting; librsvg prints the other drawing to NAME.png at 10 dots per
# mm. Writes a table. Packages: admesh, python3-ezdxf, librsvg2-bin.
set -euo pipefail
cd "$1"

echo "ring,triangles,open_edges,parts,normals_mended,volume_mm3,dxf_circle_count,dxf_face_mm2,dxf_mistakes"
for solid in *.stl; do
  ring=${solid%.stl}
  mesh=$(admesh "$solid")
  number() { sed -nE "s/.*$1 *: *([0-9.]+).*/\1/p" <<<"$mesh" | sed -n 1p; }
  drawing=$(/usr/bin/python3 - "$ring.dxf" <<'PYTHON'
import math, sys
import ezdxf

drawing = ezdxf.readfile(sys.argv[1])
circles, face = 0, 0.0
for shape in drawing.modelspace():
    layer, area = shape.dxf.layer, 0.0
    if layer not in ("OUTER_EDGE", "INNER_EDGE", "FACTORY_HOLES", "PILOT_HOLES"):
        continue
    if shape.dxftype() == "CIRCLE":
        circles += 1
        area = math.pi * shape.dxf.radius ** 2
    elif shape.dxftype() == "POLYLINE" and shape.is_closed:
        at = [v.dxf.location for v in shape.vertices]
        area = abs(sum(p.x * q.y - q.x * p.y for p, q in zip(at, at[1:] + at[:1]))) / 2
    face += area if layer == "OUTER_EDGE" else -area
print(f"{circles},{face:.2f},{len(drawing.audit().errors)}")
PYTHON
)
  rsvg-convert -d 254 -p 254 --background-color=white "$ring.svg" -o "$ring.png"
  echo "$ring,$(number 'Number of facets'),$(number 'Total disconnected facets'),$(number 'Number of parts'),$(number 'Normals fixed'),$(number 'Volume'),$drawing"
done
