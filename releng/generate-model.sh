#!/bin/bash
# Writes the code of the model from its Ecore file: generate-model.sh. With --check, only says whether the kept code is
# what the generator writes; the exit code is 1 if not.
set -euo pipefail
root=$(realpath "$(dirname "$0")/..")
. "$root/releng/packages.sh"
. "$root/releng/maven.sh"
need_packages
find_maven

generator="$root/releng/model-generator"
model="$root/bundles/org.cairnfield.model"
fresh="$generator/target/fresh"

"$mvn" -q -B -f "$generator/pom.xml" ${MAVEN_ARGS:-} compile org.apache.maven.plugins:maven-dependency-plugin:3.8.1:build-classpath \
  -Dmdep.outputFile="$generator/target/class-path" </dev/null >&2
rm -rf "$fresh"
mkdir -p "$fresh/model"
java -cp "$generator/target/classes:$(<"$generator/target/class-path")" org.cairnfield.generator.GenerateModel \
  "$model" "$fresh/model"

if [ "${1:-}" = --check ]; then
  diff -r "$model/src-gen" "$fresh/model" ||
    { echo "cairnfield: the code of the model is not what the generator writes; run releng/generate-model.sh" >&2; exit 1; }
else
  rm -rf "$model/src-gen"
  mv "$fresh/model" "$model/src-gen"
fi
