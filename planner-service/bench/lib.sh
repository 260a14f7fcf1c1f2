# Sourced by the commands of this folder: builds what is missing and starts one class.
set -eu
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
service=$(dirname "$here")
root=$(dirname "$service")

build() {
  classpath="$here/target/bench.classpath"
  newest=$(find "$here/src" "$here/pom.xml" "$service/src/main/java/stirtide/planner" -newer "$classpath" \
    -print -quit 2>/dev/null || echo none)
  if [ ! -s "$classpath" ] || [ -n "$newest" ]; then
    (cd "$root" && mvn -q -B -ntp -Pfast,bench -pl planner-service/bench -am compile dependency:build-classpath \
      -Dmdep.outputFile=target/bench.classpath -Dmdep.includeScope=runtime) >&2
    touch "$classpath"
  fi
}

# start JVM_OPTIONS CLASS ARGUMENT...
start() {
  options=$1
  shift
  exec java $options -cp "$here/target/classes:$service/target/classes:$(cat "$here/target/bench.classpath")" "$@"
}
