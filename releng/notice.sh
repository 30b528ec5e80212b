#!/bin/bash
# Makes NOTICE, the list of shipped libraries and their licences, from what was built; with --check it only compares.
set -euo pipefail
root=$(dirname "$(dirname "$(realpath "$0")")")
plugins=$(ls -d "$root"/target/app/*/workbench/plugins 2>/dev/null | head -n 1)
[ -n "$plugins" ] || { echo "nothing is built yet: start ./cairnfield or ./check first" >&2; exit 1; }
exec java "$root/releng/Notice.java" ${1:+"$1"} "$root/NOTICE" "$plugins"
