#!/bin/bash
# Tests of the commands at the root, on a tree that is built. Writes a report of the same form as those of the Java tests.
set -euo pipefail
root=$(cd "$(dirname "$0")/../.." && pwd)
. "$root/releng/build.sh"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work"

# Runs a command; its exit code, output and errors are then in $code, out and err.
run() {
  code=0
  "$@" >out 2>err </dev/null || code=$?
}

product() {
  local plugins="$root/releng/product/target/products/org.cairnfield.headless.product/linux/gtk/x86_64/plugins"
  java -Djava.awt.headless=true -jar "$plugins"/org.eclipse.equinox.launcher_*.jar -nosplash -data @none \
    -configuration "$work/configuration" "$@"
}

# A tree of its own for the tests that change sources; the space in its name is on purpose.
small_tree() {
  mkdir -p "$work/a tree/bundles/x/src" "$work/a tree/"{features,releng}
  cp "$root/cairnfield" "$root/pom.xml" "$work/a tree"
  cp "$root"/releng/*.sh "$work/a tree/releng"
  echo "class A {}" >"$work/a tree/bundles/x/src/A.java"
}

helps_without_building() {
  small_tree
  run "a tree/cairnfield" --help
  [ $code = 0 ] && grep -q '^usage: cairnfield' out && [ ! -s err ] && [ ! -e "a tree/target" ]
}

refuses_an_unknown_command() {
  run "$root/cairnfield" surveys
  [ $code = 2 ] && [ ! -s out ] && grep -q '"surveys"' err
}

leaves_standard_output_to_the_program() {
  run "$root/cairnfield" batch --help
  [ $code = 0 ] && [ -s out ] && [ ! -s err ]
}

starts_through_a_link_from_elsewhere() {
  ln -s "$root/cairnfield" here
  run ./here batch --help
  [ $code = 0 ] && [ -s out ]
}

finds_files_from_where_it_is_called() {
  cp "$root/demo-data/test/sh-test.csv" "a survey.csv"
  run "$root/cairnfield" batch intake --quiet --map "a survey.csv"
  [ $code = 0 ] && grep -q 'a survey.csv' out
}

does_the_same_inside_osgi() {
  run "$root/cairnfield" batch --help
  mv out plain
  run product --help
  [ $code = 0 ] && cmp plain out
}

hands_on_the_exit_code() {
  run "$root/cairnfield" batch no-such-command
  local plain=$code
  run product no-such-command
  [ $plain != 0 ] && [ $plain = $code ]
}

builds_by_content_only() {
  small_tree
  local root="$work/a tree" first
  first=$(fingerprint)
  touch "a tree/bundles/x/src/A.java"
  mkdir "a tree/bundles/x/target" && touch "a tree/bundles/x/target/A.class"
  [ "$(fingerprint)" = "$first" ] || return 1
  echo "class B {}" >"a tree/bundles/x/src/B.java"
  [ "$(fingerprint)" != "$first" ] || return 1
  rm "a tree/bundles/x/src/B.java"
  [ "$(fingerprint)" = "$first" ] || return 1
  mv "a tree/bundles/x/src/A.java" "a tree/bundles/x/src/C.java"
  [ "$(fingerprint)" != "$first" ]
}

keeps_names_in_a_locale_of_ascii() {
  cp "$root/demo-data/test/sh-test.csv" "Überblick.csv"
  LC_ALL=C run "$root/cairnfield" batch intake --quiet --map "Überblick.csv" --archive "Käfig" --person "Zoë Ünal"
  [ $code = 0 ] || return 1
  LC_ALL=C LANG=C run "$root/cairnfield" batch history --archive "Käfig"
  [ $code = 0 ] && grep -q 'Zoë Ünal' out && [ -e "Käfig/archive.xmi" ]
}

refuses_names_that_the_locale_has_broken() {
  LC_ALL=C run java "${java_options[@]}" -cp "$(class_path "$root/target/app/$(fingerprint)")" org.cairnfield.batch.cli.Main \
    history --archive nowhere --person "Zoë Ünal"
  [ $code = 2 ] && grep -q 'LC_ALL=C.UTF-8' err
}

# A java that says how it was called.
echoing_java() {
  mkdir -p fake my-home
  printf '#!/bin/sh\nfor word; do echo "$word"; done\n' >fake/java
  chmod +x fake/java
}

keeps_all_below_home() {
  echoing_java
  HOME="$work/my-home" PATH="$work/fake:$PATH" run "$root/cairnfield" batch --help
  [ $code = 0 ] && grep -qx -e "-Duser.home=$work/my-home" out || return 1
  HOME="$work/my-home" PATH="$work/fake:$PATH" DISPLAY=:none run "$root/cairnfield"
  [ $code = 0 ] && grep -qx -e "-Duser.home=$work/my-home" out && grep -qx -e "$work/my-home/.cairnfield/workbench" out
}

splits_on_spark_as_the_batch_command_does() {
  local job=(--map "$root"/demo-data/surveys/ls-*.csv --test "$root/demo-data/test/ls-test.csv" --epsilon 110 --quiet)
  run "$root/cairnfield" batch run "${job[@]}" --min-pts 3 --search published --out batch
  [ $code = 0 ] || return 1
  run "$root/cairnfield" spark "${job[@]}" --largest 200 --no-packs --out spark
  [ $code = 0 ] && [ "$(wc -l <batch/split-map.csv)" -gt 500 ] || return 1
  cmp batch/split-map.csv spark/split-map.csv && cmp batch/proposals.csv spark/proposals.csv &&
    cmp <(cut -d, -f1-14 batch/measures.csv) spark/measures.csv
}

count=0 failures=0 cases=
for name in helps_without_building refuses_an_unknown_command leaves_standard_output_to_the_program \
  starts_through_a_link_from_elsewhere finds_files_from_where_it_is_called does_the_same_inside_osgi \
  hands_on_the_exit_code builds_by_content_only keeps_names_in_a_locale_of_ascii \
  refuses_names_that_the_locale_has_broken keeps_all_below_home splits_on_spark_as_the_batch_command_does; do
  count=$((count + 1)) failure=
  rm -rf "$work"/*
  if ! $name; then
    failures=$((failures + 1)) failure='<failure/>'
    echo "commands.$name"
    tail -n 5 out err 2>/dev/null || true
  fi
  cases+="<testcase classname=\"commands\" name=\"$name\">$failure</testcase>"
done
mkdir -p "$root/tests/commands/target/surefire-reports"
echo "<testsuite name=\"commands\" tests=\"$count\" failures=\"$failures\" errors=\"0\" skipped=\"0\">$cases</testsuite>" \
  >"$root/tests/commands/target/surefire-reports/TEST-commands.xml"
[ $failures = 0 ]
