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
    # Tests are neither compiled nor run, so that a first start fetches as little as it can.
    if ! (cd "$root" && mvn -q -B -ntp -Dstyle.color=never -Pfast -Dmaven.test.skip=true -pl demo-day -am package) >&2; then
        say "stirtide: the build failed; the lines above say why."
        exit 69
    fi
    touch "$built"
}

# start ARGUMENTS: replaces this shell by the program
start() {
    need java
    up_to_date || build
    exec java -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto -Djava.awt.headless=true \
        -Dorg.slf4j.simpleLogger.defaultLogLevel=error -Dstirtide.demo.salon="$root/demo-day/salon" \
        -cp "$root/demo-day/target/lib/*" stirtide.demo.Main "$@"
}
