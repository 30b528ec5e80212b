# Sourced with $root set: modules_of NAME prints what Maven needs to build org.cairnfield.NAME.tests alone, for its option -pl. Tycho
# knows what a bundle needs only when it is too late for Maven's own -am.

modules_of() {
  local todo=("org.cairnfield.$1.tests" org.cairnfield.testkit) seen=" " at manifest
  while [ ${#todo[@]} -gt 0 ]; do
    at=${todo[0]}
    todo=("${todo[@]:1}")
    [[ $seen != *" $at "* ]] || continue
    seen+="$at "
    manifest=$(ls "$root"/{bundles,tests}/"$at"/META-INF/MANIFEST.MF 2>/dev/null) || true
    [ -n "$manifest" ] || continue
    todo+=($(tr -d '\r' <"$manifest" | awk '/^ / { printf "%s", substr($0, 2); next } { printf "\n%s", $0 }' |
      grep -E '^(Fragment-Host|Require-Bundle):' | grep -oE 'org\.cairnfield\.[a-z.]*' | sort -u))
  done
  echo ":org.cairnfield.target$(for at in $seen; do printf ',:%s' "$at"; done)"
}
