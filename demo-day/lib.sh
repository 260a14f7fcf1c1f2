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
    # Copying libraries takes none away, and one that is no longer used would go on being found.
    rm -rf "$root/demo-day/target/lib"
    local log="$root/demo-day/target/build.log"
    # Tests are neither compiled nor run, so that a first start fetches as little as it can.
    if ! (cd "$root" && mvn -q -B -ntp -Pfast -Dmaven.test.skip=true -pl demo-day -am package) >"$log" 2>&1; then
        tail -n 40 "$log" >&2
        say "stirtide: the build failed; the lines above say why, $log has all of them."
        exit 69
    fi
    touch "$built"
}

archive="$root/demo-day/target/demo.jsa"
java_options=("-XX:SharedArchiveFile=$archive" -Xlog:disable -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto -Djava.awt.headless=true -Djava.io.tmpdir=/tmp
    --enable-native-access=ALL-UNNAMED
    -Dstirtide.demo.salon="$root/demo-day/salon"
    -cp "$root/demo-day/target/lib/*")

# An archive of parsed classes serves one place and one Java only; any other ignores it without a word.
made_for() { echo "$root $(readlink -f "$(command -v java)")"; }

prepare() {
    [ -f "$archive" ] && [ "$archive" -nt "$built" ] && [ "$(cat "$archive.for" 2>/dev/null)" = "$(made_for)" ] && return
    say "stirtide: preparing quick starts, once ..."
    rm -f "$archive" "$archive".*
    # Starts everything a demo starts, except the terminal.
    if java "-XX:ArchiveClassesAtExit=$archive.$$" "${java_options[@]:1}" stirtide.demo.DemoMain run --start-and-stop \
        >/dev/null 2>&1; then
        mv "$archive.$$" "$archive" && made_for >"$archive.for"
    fi
    # Without one everything works, only slower; tried again with the next build.
    rm -f "$archive.$$"
    [ -f "$archive" ] || { : >"$archive" && made_for >"$archive.for"; }
}

ready() {
    need java
    up_to_date || build
    prepare
}

# start ARGUMENTS: replaces this shell by the program
start() {
    ready
    exec java "${java_options[@]}" stirtide.demo.DemoMain "$@"
}

# start_on_terminal ARGUMENTS: runs the program and leaves terminal and temporary folder clean even if it is killed
start_on_terminal() {
    [ -t 0 ] && [ -t 1 ] || start "$@"
    ready
    local before child code=0
    before=$(stty -g)
    printf 'stirtide: starting ...' >&2
    java "${java_options[@]}" stirtide.demo.DemoMain "$@" <&0 &
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
