# Sourced with $root set: maven LOG ARGS… runs Maven over the whole tree, its output in LOG, one line a module on stderr.
# MAVEN_ARGS is added to each run, for instance MAVEN_ARGS=-Dmaven.repo.local=DIR.

# A build is over before the full compiler has paid: without it Maven takes half of the processor time.
export MAVEN_OPTS="-XX:TieredStopAtLevel=1 -XX:+UseSerialGC ${MAVEN_OPTS-}"

progress() { printf 'cairnfield: %4d s  %s\n' "$SECONDS" "$*" >&2; }

# Sets mvn. Tycho 4 wants Maven 3.9; an older one is good enough to fetch a newer one.
find_maven() {
  mvn=mvn
  if mvn -v 2>/dev/null | grep -E 'Maven (3\.9|[4-9])' >/dev/null; then return; fi
  local version=3.9.11 home="${XDG_CACHE_HOME:-$HOME/.cache}/cairnfield" fresh
  mvn="$home/apache-maven-$version/bin/mvn"
  if [ -x "$mvn" ]; then return; fi
  progress "fetching Maven $version"
  mkdir -p "$home"
  fresh=$(mktemp -d "$home/fresh.XXXXXX")
  # run outside the project, which the old one cannot load; moved when complete, so that nobody meets half a Maven
  (cd "$fresh" && mvn -q -B -l log ${MAVEN_ARGS:-} org.apache.maven.plugins:maven-dependency-plugin:3.8.1:unpack \
    -Dartifact="org.apache.maven:apache-maven:$version:zip:bin" -DoutputDirectory="$fresh") >/dev/null 2>&1 </dev/null || {
    cat "$fresh/log" >&2
    return 1
  }
  chmod +x "$fresh/apache-maven-$version/bin/mvn"
  mv -T "$fresh/apache-maven-$version" "${mvn%/bin/mvn}" 2>/dev/null || [ -x "$mvn" ]
  rm -rf "$fresh"
}

# The time of the checked-out commit, which goes into all jars (see pom.xml). Nothing where the tree itself is no
# checkout: a copy of it that lies inside some other repository has no commit.
commit_time() {
  if [ -e "$root/.git" ]; then
    TZ=UTC git -c safe.directory="$root" -C "$root" log -1 --date=format-local:%Y-%m-%dT%H:%M:%SZ --format=%cd 2>/dev/null || true
  fi
}

maven() {
  local log=$1 time line fetched=0 told=$SECONDS
  shift
  find_maven || return 1
  time=$(commit_time)
  progress "building (details in ${log#"$root"/})"
  "$mvn" -B -f "$root/pom.xml" ${time:+-Dbuild.moment="$time"} "$@" </dev/null 2>&1 |
    while IFS= read -r line; do
      case $line in
        *"] Downloading from "*) continue ;;
        *"] Downloaded from "*)
          fetched=$((fetched + 1))
          if [ $((SECONDS - told)) -ge 5 ]; then told=$SECONDS; progress "files fetched: $fetched"; fi
          continue ;;
        "[INFO] Building "*" ["*/*"]") set -- $line; progress "${!#} $3" ;;
      esac
      printf '%s\n' "$line"
    done >"$log"
}
