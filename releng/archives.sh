#!/bin/bash
# Packs the workbench for Linux, Windows and macOS, in target/archives, and checks what is in each; with --start the one for Linux
# is started as well, on the display there is. The parts that differ from system to system come from the same place as all
# libraries; Java, 17 or newer, is not in the archives.
set -euo pipefail
root=$(dirname "$(dirname "$(realpath "$0")")")
. "$root/releng/build.sh"
. "$root/releng/display.sh"

# as the toolkit calls its parts; the first is the one that is built
systems=(gtk.linux.x86_64 win32.win32.x86_64 cocoa.macosx.aarch64 cocoa.macosx.x86_64)
out="$root/target/archives"
name=cairnfield-0.1.0

# Of the toolkit, the version in the target.
toolkit_version() {
  grep -o '<artifactId>org.eclipse.swt</artifactId><version>[^<]*' "$root/releng/platform/org.cairnfield.target.target" | sed 's/.*>//'
}

# The toolkit's own parts of the other systems, in target/archives/parts, by one Maven for all.
fetch_parts() {
  local system version log="$out/fetch.log"
  version=$(toolkit_version)
  [ "$(ls "$out/parts" | wc -l)" -lt 3 ] || return 0
  find_maven
  progress "fetching the toolkits of other systems"
  {
    echo '<project xmlns="http://maven.apache.org/POM/4.0.0"><modelVersion>4.0.0</modelVersion><groupId>org.cairnfield</groupId><artifactId>parts</artifactId><version>1</version><dependencies>'
    for system in "${systems[@]:1}"; do
      echo "<dependency><groupId>org.eclipse.platform</groupId><artifactId>org.eclipse.swt.$system</artifactId><version>$version</version></dependency>"
    done
    echo '</dependencies></project>'
  } >"$out/parts.xml"
  "$mvn" -q -B -ntp -f "$out/parts.xml" ${MAVEN_ARGS:-} org.apache.maven.plugins:maven-dependency-plugin:3.8.1:copy-dependencies -DexcludeTransitive=true \
    -DoutputDirectory="$out/parts" >"$log" 2>&1 </dev/null || {
    cat "$log" >&2
    return 1
  }
}

archive_of() { # as people call the systems
  case $1 in
    gtk.*) echo "$out/$name-linux-${1##*.}.tar.gz" ;;
    win32.*) echo "$out/$name-windows-${1##*.}.zip" ;;
    *) echo "$out/$name-macos-${1##*.}.tar.gz" ;;
  esac
}

bundle_version() { unzip -p "$1" META-INF/MANIFEST.MF | tr -d '\r' | sed -n 's/^Bundle-Version: //p'; }

# unix_start FOLDER OPTIONS FILE
unix_start() {
  cat >"$1/$3" <<S
#!/bin/sh
# Starts Cairnfield; with "batch" as the first word, without a window.
here=\$(cd "\$(dirname "\$0")" && pwd)
command -v java >/dev/null || { echo "cairnfield: Java 17 or newer is needed" >&2; exit 1; }
launcher=\$(echo "\$here"/plugins/org.eclipse.equinox.launcher_*.jar)
if [ "\${1-}" = batch ]; then
  shift
  exec java -Djava.awt.headless=true -Duser.home="\$HOME" -jar "\$launcher" -nosplash -consoleLog -data @none -configuration "\${TMPDIR:-/tmp}/cairnfield-batch-\$(id -u)" -application org.cairnfield.batch.application "\$@"
fi
exec java $2 -Duser.home="\$HOME" -jar "\$launcher" -nosplash -data @noDefault -user "\$HOME/.cairnfield/workbench" "\$@"
S
  chmod +x "$1/$3"
}

windows_start() {
  sed 's/$/\r/' >"$1/cairnfield.cmd" <<'S'
@echo off
rem Starts Cairnfield; with "batch" as the first word, without a window.
setlocal
for %%j in ("%~dp0plugins\org.eclipse.equinox.launcher_*.jar") do set launcher=%%j
if "%1"=="batch" goto batch
start "Cairnfield" javaw -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -jar "%launcher%" -nosplash -data @noDefault -user "%USERPROFILE%\.cairnfield\workbench" %*
exit /b
:batch
shift
set words=
:more
if "%~1"=="" goto run
set words=%words% %1
shift
goto more
:run
java -jar "%launcher%" -nosplash -consoleLog -data @none -configuration "%TEMP%\cairnfield-batch" -application org.cairnfield.batch.application%words%
S
}

# pack SYSTEM: a folder with the bundles of that system, its start script, licence and notice, as one archive
pack() {
  local system=$1 folder="$out/$1/$name" info part options="-XX:+UseSerialGC -XX:TieredStopAtLevel=1"
  rm -rf "$out/$1"
  mkdir -p "$folder"
  cp -r "$app"/workbench/{plugins,features,configuration} "$folder"
  rm -rf "$folder"/configuration/org.eclipse.update
  cp "$root"/{LICENSE,NOTICE} "$folder"
  cp -r "$root/docs/guide" "$folder/guide"
  info="$folder/configuration/org.eclipse.equinox.simpleconfigurator/bundles.info"
  if [ "$system" != "${systems[0]}" ]; then
    part="$out/parts/org.eclipse.swt.$system-$(toolkit_version).jar"
    rm "$folder"/plugins/org.eclipse.swt."${systems[0]}"_*.jar
    cp "$part" "$folder/plugins/org.eclipse.swt.${system}_$(bundle_version "$part").jar"
    sed -i "s|^org.eclipse.swt.${systems[0]},.*|org.eclipse.swt.$system,$(bundle_version "$part"),plugins/org.eclipse.swt.${system}_$(bundle_version "$part").jar,4,false|" "$info"
  fi
  case $system in
    win32*) windows_start "$folder" ;;
    cocoa*) unix_start "$folder" "-XstartOnFirstThread $options" cairnfield.command ;;
    *) unix_start "$folder" "$options" cairnfield.sh ;;
  esac
  if [[ $system == win32* ]]; then
    (cd "$out/$system" && zip -q -1 -r -X "$(archive_of "$system")" "$name")
  else
    tar -C "$out/$system" -I "gzip -1" --owner=0 --group=0 --numeric-owner --sort=name -cf "$(archive_of "$system")" "$name"
  fi
  rm -rf "${out:?}/$system"
}

listing() { case $1 in *.zip) unzip -Z1 "$1" ;; *) tar -tzf "$1" ;; esac; }
content() { case $1 in *.zip) unzip -p "$1" "$2" ;; *) tar -xzOf "$1" "$2" ;; esac; }

# Every bundle that is to be started is there, and none that is not; one part of the toolkit, of this system; start, licence, notice.
check() {
  local system=$1 archive=$2 said there
  listing "$archive" >"$out/listing"
  said=$(content "$archive" "$name/configuration/org.eclipse.equinox.simpleconfigurator/bundles.info" | grep -v '^#' | cut -d, -f3 | LC_ALL=C sort)
  there=$(sed -n "s|^$name/\(plugins/[^/]*\.jar\)$|\1|p" "$out/listing" | LC_ALL=C sort)
  [ "$said" = "$there" ] || { echo "$archive: bundles.info and plugins differ:" >&2; diff <(echo "$said") <(echo "$there") >&2; return 1; }
  [ "$(grep -cE 'plugins/org\.eclipse\.swt\.(gtk|win32|cocoa)\.' "$out/listing")" = 1 ] && grep -q "plugins/org.eclipse.swt.${system}_" "$out/listing" || {
    echo "$archive: not the toolkit of $system" >&2
    return 1
  }
  for each in LICENSE NOTICE guide/index.md; do
    grep -qx "$name/$each" "$out/listing" || { echo "$archive: $each is missing" >&2; return 1; }
  done
  grep -qE "^$name/cairnfield\.(sh|cmd|command)$" "$out/listing" || { echo "$archive: nothing to start it by" >&2; return 1; }
  echo "${archive##*/}: $(wc -l <"$out/listing") files, $(($(stat -c %s "$archive") / 1048576)) MiB"
}

# Unpacked, with a home of its own: batch answers, and the window comes up.
start() {
  local folder="$out/start" window
  rm -rf "$folder"
  mkdir -p "$folder/home"
  tar -C "$folder" -xzf "$(archive_of "${systems[0]}")"
  HOME="$folder/home" TMPDIR="$folder" "$folder/$name/cairnfield.sh" batch --version >"$folder/version"
  grep -q '^Cairnfield 0' "$folder/version" || { echo "batch says: $(cat "$folder/version")" >&2; return 1; }
  HOME="$folder/home" setsid "$folder/$name/cairnfield.sh" >"$folder/log" 2>&1 </dev/null &
  window=$!
  for _ in $(seq 120); do
    if xdotool search --onlyvisible --name Cairnfield >/dev/null 2>&1; then
      kill -- "-$window" 2>/dev/null || true
      wait "$window" 2>/dev/null || true
      if grep -rqs '^!ENTRY .* 4 ' "$folder/home/.cairnfield/workbench/.metadata/.log"; then cat "$folder/home/.cairnfield/workbench/.metadata/.log" >&2; return 1; fi
      echo "started from the archive: $(head -n 1 "$folder/version"), and the window came up"
      rm -rf "$folder"
      return
    fi
    kill -0 "$window" 2>/dev/null || break
    sleep 0.5
  done
  kill -- "-$window" 2>/dev/null || true
  echo "no window came up; see $folder" >&2
  return 1
}

ensure_app
need_packages zip unzip
mkdir -p "$out/parts"
rm -f "$out"/*.{zip,tar.gz}
fetch_parts
for system in "${systems[@]}"; do
  pack "$system"
  check "$system" "$(archive_of "$system")"
done
if [ "${1-}" = --start ]; then
  need_packages xvfb openbox xdotool
  need_toolkit
  private_display
  start
fi
