#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""as_pdf.py PICTURE.jpg PLAN.pdf: a page of 800 by 450 points that is this grey or coloured JPEG of 1600 by 900."""
import subprocess
import sys


def main(picture, plan):
    with open(picture, "rb") as file:
        content = file.read()
    channels = subprocess.run(["identify", "-format", "%[channels]", picture], capture_output=True, check=True, text=True)
    space = b"DeviceGray" if channels.stdout.startswith("gray") else b"DeviceRGB"
    drawing = b"q 800 0 0 450 0 0 cm /Plan Do Q"
    objects = [
        b"<</Type/Catalog/Pages 2 0 R>>",
        b"<</Type/Pages/Kids[3 0 R]/Count 1>>",
        b"<</Type/Page/Parent 2 0 R/MediaBox[0 0 800 450]/Resources<</XObject<</Plan 4 0 R>>>>/Contents 5 0 R>>",
        b"<</Type/XObject/Subtype/Image/Width 1600/Height 900/BitsPerComponent 8/ColorSpace/%b/Filter/DCTDecode"
        b"/Length %d>>stream\n%b\nendstream" % (space, len(content), content),
        b"<</Length %d>>stream\n%b\nendstream" % (len(drawing), drawing),
    ]
    document = b"%PDF-1.4\n"
    places = []
    for number, each in enumerate(objects, 1):
        places.append(len(document))
        document += b"%d 0 obj\n%b\nendobj\n" % (number, each)
    table = b"xref\n0 %d\n0000000000 65535 f \n" % (len(objects) + 1)
    table += b"".join(b"%010d 00000 n \n" % place for place in places)
    trailer = b"trailer<</Size %d/Root 1 0 R>>\nstartxref\n%d\n%%%%EOF\n" % (len(objects) + 1, len(document))
    with open(plan, "wb") as file:
        file.write(document + table + trailer)


main(*sys.argv[1:])
