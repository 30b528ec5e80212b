#!/bin/bash
# Draws the icons of the model anew from their SVG sources, in 16 and 32 pixels: render-icons.sh. For whoever edits one;
# the build takes the PNG files that are kept.
set -euo pipefail
root=$(realpath "$(dirname "$0")/..")
. "$root/releng/packages.sh"
need_packages librsvg2-bin
for svg in "$root"/bundles/org.cairnfield.model.edit/icons/model/*.svg; do
  rsvg-convert -w 16 -h 16 "$svg" -o "${svg%.svg}.png"
  rsvg-convert -w 32 -h 32 "$svg" -o "${svg%.svg}@2x.png"
done
