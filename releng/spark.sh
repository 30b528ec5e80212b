# Sourced after releng/build.sh: builds the runner on Spark, a Maven project of its own, in target/spark.

spark_sources() {
  (cd "$root" && find bundles/org.cairnfield.{core,exchange,spark} bundles/org.cairnfield.model/src/org/cairnfield/model/values tests/org.cairnfield.spark.tests \( -name target -o -name bin -o -name '.?*' \) -prune \
    -o -type f -print0 | LC_ALL=C sort -z | xargs -0 sha256sum | sha256sum | cut -c1-16)
}

# build_spark ARGS… builds it in any case, ARGS being Maven's.
build_spark() {
  local log="$root/target/spark.log"
  find_maven || return 1
  progress "runner on Spark, the first time with Spark itself, 280 MB (details in ${log#"$root"/})"
  rm -rf "$root/target/spark"
  "$mvn" -B -ntp -f "$root/bundles/org.cairnfield.spark/pom.xml" package "$@" </dev/null >"$log" 2>&1 || { explain_failure "$log"; return 1; }
  spark_sources >"$root/target/spark/built"
}

ensure_spark() {
  need_packages
  mkdir -p "$root/target"
  exec 8>"$root/target/spark.lock"
  flock 8
  if [ "$(cat "$root/target/spark/built" 2>/dev/null)" != "$(spark_sources)" ]; then build_spark -DskipTests || exit 1; fi
  exec 8>&-
}

# Locally, on all processors, with no cluster.
spark() {
  local module="$root/bundles/org.cairnfield.spark"
  exec java "@$module/java.options" -XX:+UseParallelGC -XX:MaxRAMPercentage=50 -Djava.awt.headless=true \
    -Dlog4j2.configurationFile="$module/log4j2.properties" ${CAIRNFIELD_JAVA_OPTS:-} \
    -cp "$root/target/spark/cairnfield-spark.jar:$(<"$root/target/spark/classpath")" org.cairnfield.spark.SparkCommand "$@"
}
