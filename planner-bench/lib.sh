# Sourced by the commands of this folder: builds what is missing and starts one class.
set -eu
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)

build() {
  classpath="$here/target/bench.classpath"
  newest=$(find "$here/src" "$here/pom.xml" "$here/../planner-service/src/main/java/stirtide/planner" -newer "$classpath" \
    -print -quit 2>/dev/null || echo none)
  if [ ! -s "$classpath" ] || [ -n "$newest" ]; then
    (cd "$here/.." && mvn -q -B -ntp -Pfast,bench -pl planner-bench -am compile dependency:build-classpath \
      -Dmdep.outputFile=target/bench.classpath -Dmdep.includeScope=runtime) >&2
    touch "$classpath"
  fi
}

# start JVM_OPTIONS CLASS ARGUMENT...
start() {
  options=$1
  shift
  exec java $options -cp "$here/target/classes:$here/../planner-service/target/classes:$(cat "$here/target/bench.classpath")" "$@"
}
