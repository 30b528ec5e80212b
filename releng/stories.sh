# Sourced with $root set, after build.sh: builds the stories of the workbench and tells them again without building.

stories="$root/tests/org.cairnfield.ui.tests"
installed="$stories/target/work" # what Tycho has made to run them

# Everything is built and the tests are ready to run; one small story is told, since the runner prepares itself only then.
build_stories() {
  lock_build
  forget_builds
  maven "$1" verify -Dtest=FirstStartStoryTest -DfailIfNoTests=false -Dsurefire.failIfNoSpecifiedTests=false \
    -Dmaven.test.failure.ignore=true || { explain_failure "$1"; return 1; }
  keep_app "$root/target/app/$(fingerprint)"
  unlock_build
}

# tell_stories FOLDER [STORY...]: tells them once, as a new person, with all that comes of it below the folder; all of them
# unless some are named, but for wandering, which tests/wander does. Options of the JVM in $story_options.
tell_stories() {
  local folder=$1 n=0 file launcher
  shift
  rm -rf "$folder"
  mkdir -p "$folder/reports" "$folder/home"
  cp -r "$installed/configuration" "$folder/configuration"
  find "$folder/configuration" -mindepth 1 -maxdepth 1 ! -name config.ini -exec rm -rf {} +
  {
    grep -v -e '^__provider' -e '^reportsdirectory' "$stories/target/surefire.properties"
    echo "reportsdirectory=$folder/reports"
    while IFS= read -r file; do
      file=${file#"$stories/src/"}
      file=${file%.java}
      echo "__provider.tc.$n=${file//\//.}"
      n=$((n + 1))
    done < <(if [ $# -gt 0 ]; then for story; do find "$stories/src" -name "$story.java"; done; else find "$stories/src" -name '*StoryTest.java' ! -name WanderStoryTest.java; fi | sort)
  } >"$folder/surefire.properties"
  launcher=$(echo "$root"/releng/product/target/products/org.cairnfield.workbench.product/linux/gtk/x86_64/plugins/org.eclipse.equinox.launcher_*.jar)
  (cd "$stories" && exec java -Dosgi.noShutdown=false -Dosgi.os=linux -Dosgi.ws=gtk -Dosgi.arch=x86_64 -Duser.home="$folder/home" \
    -Dcairnfield.screenshots="$folder/screenshots" -Dosgi.clean=true -XX:TieredStopAtLevel=1 -XX:+UseSerialGC ${story_options-} -jar "$launcher" -data "$folder/data" \
    -install "$installed" -configuration "$folder/configuration" -application org.eclipse.tycho.surefire.osgibooter.uitest \
    -testproperties "$folder/surefire.properties" -testApplication org.cairnfield.ui.application \
    -product org.cairnfield.ui.product -nouithread) >"$folder/log" 2>&1 </dev/null &&
    ! grep -qhE '<testsuite [^>]*(failures|errors)="[1-9]' "$folder"/reports/*.xml && ls "$folder"/reports/*.xml >/dev/null 2>&1
}
