# Sourced with $root set: makes sure that $app holds the products as built from the present sources.
# Names of files and people are in UTF-8. A locale that knows ASCII only, as cron and containers have it, would break them
# before the JVM could see them.
if [ "$(locale charmap 2>/dev/null)" = ANSI_X3.4-1968 ]; then export LC_ALL=C.UTF-8; fi

. "$root/releng/packages.sh"
. "$root/releng/maven.sh"

# What the sources of the workbench are, by content, so that a touched file or a switched branch and back builds nothing; without Git, so
# that an unpacked archive works too.
fingerprint() {
  (cd "$root" && find bundles features releng $(ls -d docs/guide 2>/dev/null) pom.xml \( -name target -o -name bin -o -name '.?*' -o -name org.cairnfield.spark \) -prune -o -type f -print0 |
    LC_ALL=C sort -z | xargs -0 sha256sum | sha256sum | cut -c1-16)
}

# One build at a time in this tree; whoever comes second waits.
lock_build() {
  mkdir -p "$root/target"
  exec 9>"$root/target/build.lock"
  flock -n 9 || { progress "waiting for another build of this tree"; flock 9; }
}
unlock_build() { exec 9>&-; }

# Keeps the jars of the headless product, and the workbench, in a folder of their own named by fingerprint: a program that runs from the previous folder
# goes on while the next one is built. The folder appears complete or not at all.
keep_app() {
  local jar fresh
  [ ! -e "$1" ] || return 0
  fresh=$(mktemp -d "$root/target/fresh.XXXXXX")
  local products="$root/releng/product/target/products"
  for jar in "$products"/org.cairnfield.headless.product/linux/gtk/x86_64/plugins/*.jar; do
    case ${jar##*/} in
      org.eclipse.emf.* | org.eclipse.jgit_*) cp "$jar" "$fresh" ;; # libraries that need no OSGi
      org.eclipse.* | org.osgi.* | org.apache.felix.*) ;; # only OSGi needs them
      *) cp "$jar" "$fresh" ;;
    esac
  done
  cp -r "$products/org.cairnfield.workbench.product/linux/gtk/x86_64" "$fresh/workbench"
  mkdir -p "${1%/*}"
  chmod 755 "$fresh" # a temporary folder is private
  mv -T "$fresh" "$1"
  # the folder before this one may still be running
  ls -td "${1%/*}"/* | tail -n +3 | tr '\n' '\0' | xargs -0 rm -rf
  archive_classes "$1"
}

# Loading the classes of the command line from an archive of the JVM takes about a third off the start. Only a gain in
# time: when it fails, or another JVM finds it unfit, classes load as usual.
archive_classes() {
  java "${java_options[@]}" -XX:ArchiveClassesAtExit="$1/fresh.jsa" -cp "$(class_path "$1")" \
    org.cairnfield.batch.cli.Main --help >/dev/null 2>&1 </dev/null || true
  [ ! -e "$1/fresh.jsa" ] || mv "$1/fresh.jsa" "$1/classes.jsa"
}

class_path() {
  local jars=("$1"/*.jar) IFS=:
  echo "${jars[*]}"
}

# The JVM's own messages would go to standard output, which belongs to the program.
java_options=(-Djava.awt.headless=true -XX:+UseParallelGC -XX:MaxRAMPercentage=50 -Xlog:disable -Xlog:all=error:stderr)

# For the workbench: the quick compiler alone halves the processor time of a start, and long work is still fast enough.
workbench_options=(-XX:MaxRAMPercentage=50 -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Djava.awt.headless=true -Xlog:disable -Xlog:all=error:stderr)

# Starts the workbench with these arguments of the JVM, and its classes from an archive of the JVM, which the first window makes
# when it is closed. That gets its name only when it is whole, for the JVM crashes on one that is cut short.
open_window() {
  local classes="$app/window.jsa" fresh="$app/fresh.$$.jsa" window code
  if [ -e "$classes" ]; then exec java -XX:SharedArchiveFile="$classes" "$@"; fi
  java -XX:ArchiveClassesAtExit="$fresh" "$@" &
  window=$!
  trap 'kill -TERM $window' TERM HUP INT
  code=0
  until wait "$window" && code=0 || { code=$?; ! kill -0 "$window" 2>/dev/null; }; do :; done
  [ $code != 0 ] || mv "$fresh" "$classes" 2>/dev/null || true
  rm -f "$fresh"
  exit $code
}

# Empties what earlier builds left, so that a deleted class is gone and a report is of this run.
forget_builds() { rm -rf "$root"/{bundles,features,releng,tests}/*/target "$root"/target/fresh.*; }

explain_failure() {
  echo "cairnfield: the build failed; all of its output is in $1" >&2
  grep '^\[ERROR\] [^ ]' "$1" | grep -vE '^.ERROR. .Help|resume the build|-X switch|-e switch|following articles' | head -n 20 >&2 || tail -n 20 "$1" >&2
}

ensure_app() {
  local log="$root/target/build.log"
  app="$root/target/app/$(fingerprint)"
  if [ -d "$app" ] && command -v java >/dev/null; then return; fi
  need_packages
  lock_build
  app="$root/target/app/$(fingerprint)" # somebody else may have built or edited while this one waited
  if [ ! -d "$app" ]; then
    forget_builds
    maven "$log" verify -DskipTests || { explain_failure "$log"; exit 1; }
    keep_app "$app"
    progress "built"
  fi
  unlock_build
}
