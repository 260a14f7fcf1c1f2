# Shared by the scripts of this folder. Builds what is missing or older than its sources, then starts Java.
# Not to be run by itself.

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd -P)
built="$root/demo-day/target/lib/demo-day.jar"

say() { printf '%s\n' "$*" >&2; }

need() {
    command -v "$1" >/dev/null 2>&1 && return
    say "$1 is needed and not on the PATH. Needed: Java 17 or newer and Maven 3.8 or newer."
    exit 69
}

up_to_date() {
    [ -f "$built" ] || return 1
    local newer
    newer=$(cd "$root" && find pom.xml ./*/pom.xml ./*/src/main -newer "$built" -print -quit)
    [ -z "$newer" ]
}

build() {
    need mvn
    say "stirtide: building, the first time this fetches libraries and takes some minutes ..."
    mkdir -p "$root/demo-day/target"
    local log="$root/demo-day/target/build.log"
    # Tests are neither compiled nor run, so that a first start fetches as little as it can.
    if ! (cd "$root" && mvn -q -B -ntp -Pfast -Dmaven.test.skip=true -pl demo-day -am package) >"$log" 2>&1; then
        tail -n 40 "$log" >&2
        say "stirtide: the build failed; the lines above say why, $log has all of them."
        exit 69
    fi
    touch "$built"
}

java_options=(-XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto -Djava.awt.headless=true -Djava.io.tmpdir=/tmp
    -Dorg.slf4j.simpleLogger.defaultLogLevel=error -Dstirtide.demo.salon="$root/demo-day/salon"
    -cp "$root/demo-day/target/lib/*")

ready() {
    need java
    up_to_date || build
}

# start ARGUMENTS: replaces this shell by the program
start() {
    ready
    exec java "${java_options[@]}" stirtide.demo.Main "$@"
}

# start_on_terminal ARGUMENTS: runs the program and leaves terminal and temporary folder clean even if it is killed
start_on_terminal() {
    [ -t 0 ] && [ -t 1 ] || start "$@"
    ready
    local before child code=0
    before=$(stty -g)
    java "${java_options[@]}" stirtide.demo.Main "$@" <&0 &
    child=$!
    trap 'kill -TERM "$child" 2>/dev/null || true' INT TERM HUP
    # A trapped signal ends the first wait early; the program is then still on its way out.
    wait "$child" || code=$?
    while kill -0 "$child" 2>/dev/null; do code=0; wait "$child" || code=$?; done
    if [ "$code" -gt 128 ]; then
        stty "$before" 2>/dev/null || true
        printf '\033[0m\033[?25h\033[?2004l\033[?1049l' 2>/dev/null || true
        rm -rf "/tmp/stirtide-demo-$child-"*
    fi
    exit "$code"
}
