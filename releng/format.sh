#!/bin/bash
# Formats the code that is written by hand as releng/format/formatter.xml says, lines of 120 columns. With --check, only
# names the first file that is not; the exit code is 1 then.
set -euo pipefail
root=$(dirname "$(dirname "$(realpath "$0")")")
. "$root/releng/packages.sh"
. "$root/releng/maven.sh"
need_packages
find_maven
goal=format
[ "${1-}" != --check ] || goal=validate
"$mvn" -q -B -f "$root/releng/format/pom.xml" ${MAVEN_ARGS:-} "net.revelc.code.formatter:formatter-maven-plugin:$goal" </dev/null >&2 ||
  { [ "$goal" = format ] || echo "cairnfield: run releng/format.sh" >&2; exit 1; }
