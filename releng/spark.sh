# Sourced after releng/build.sh: builds the runner on Spark, a Maven project of its own, in target/spark.

spark_sources() {
  (cd "$root" && find bundles/org.cairnfield.{core,exchange,spark} tests/org.cairnfield.spark.tests \( -name target -o -name bin -o -name '.?*' \) -prune \
    -o -type f -print0 | LC_ALL=C sort -z | xargs -0 sha256sum | sha256sum | cut -c1-16)
}

# spark_maven LOG ARGS…
spark_maven() {
  local log=$1
  shift
  find_maven || return 1
  progress "runner on Spark, the first time with Spark itself, 280 MB (details in ${log#"$root"/})"
  "$mvn" -B -ntp -f "$root/bundles/org.cairnfield.spark/pom.xml" "$@" </dev/null >"$log" 2>&1
}

# The first time fetches Spark, some 280 MB.
ensure_spark() {
  local log="$root/target/spark.log" sources
  need_packages
  mkdir -p "$root/target"
  exec 8>"$root/target/spark.lock"
  flock 8
  sources=$(spark_sources)
  if [ "$(cat "$root/target/spark/built" 2>/dev/null)" != "$sources" ]; then
    rm -rf "$root/target/spark"
    spark_maven "$log" package -DskipTests || { explain_failure "$log"; exit 1; }
    echo "$sources" >"$root/target/spark/built"
  fi
  exec 8>&-
}

# Locally, on all processors, with no cluster.
spark() {
  local module="$root/bundles/org.cairnfield.spark"
  exec java "@$module/java.options" -XX:+UseParallelGC -XX:MaxRAMPercentage=50 -Djava.awt.headless=true \
    -Dlog4j2.configurationFile="$module/log4j2.properties" ${CAIRNFIELD_JAVA_OPTS:-} \
    -cp "$root/target/spark/cairnfield-spark.jar:$(<"$root/target/spark/classpath")" org.cairnfield.spark.SparkCommand "$@"
}
