# Builds, trains and starts the programs of the product. Included by the scripts, not run by itself.
#
#   program NAME MODULE MAIN_CLASS [JVM_OPTION]...   names the program; its jars are in MODULE/target/lib
#   launch [ARGUMENT]...                             replaces the shell by the program
#   launch_on_terminal [ARGUMENT]...                 runs it as a child and restores the terminal if it is killed
#
# Both build and train first when that is needed. STIRTIDE_PRINT_COMMAND=1 prints the command, one word a line, instead of
# running it: trials start many times and want to be the parent of the JVM itself.

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd -P)
product_flags=(-Xshare:auto -Xlog:disable -Djava.awt.headless=true)

say() { printf '%s\n' "stirtide: $*" >&2; }

program() {
    name=$1 module=$2 main=$3
    target="$root/$module/target"
    jar="$target/lib/$module.jar"
    archive="$target/$name.jsa"
    flags=("${product_flags[@]}" "${@:4}")
}

need() {
    command -v "$1" >/dev/null 2>&1 && return
    say "$1 is needed and not on the PATH. Needed: Java 17 or newer and Maven 3.8 or newer."
    exit 69
}

build() {
    need mvn
    say "building $module, the first time this fetches libraries and takes some minutes ..."
    mkdir -p "$target"
    # Copying libraries removes none, and one that is no longer used would still be found.
    rm -rf "$target/lib"
    # Tests are neither compiled nor run, so that a first start fetches as little as it can.
    if ! (cd "$root" && mvn -q -B -ntp -Dstyle.color=never -Pfast -Dmaven.test.skip=true -pl "$module" -am package) \
        >"$target/build.log" 2>&1; then
        tail -n 40 "$target/build.log" >&2
        say "the build failed; the lines above say why, $target/build.log has all of them."
        exit 69
    fi
    touch "$jar"
}

is_older_than_sources() {
    [ -n "$(cd "$root" && find pom.xml ./*/pom.xml ./*/src/main ./*/*/pom.xml ./*/*/src/main -type f -newer "$jar" -print -quit 2>/dev/null)" ]
}

# A class data archive fits one class path and one Java; any other JVM ignores it silently.
trained_for() { printf '%s %s' "$target" "$(readlink -f "$(command -v java)")"; }

# A script whose program starts often defines "train": it runs the program once with the JVM options given, and the JVM records
# the classes a start needs.
train_once() {
    declare -F train >/dev/null || return 0
    [ -f "$archive" ] && [ "$archive" -nt "$jar" ] && [ "$(cat "$archive.for" 2>/dev/null)" = "$(trained_for)" ] && return
    say "preparing quick starts, once ..."
    rm -f "$archive" "$archive".*
    if train "-XX:ArchiveClassesAtExit=$archive.$$" >/dev/null 2>&1 && [ -f "$archive.$$" ]; then
        mv "$archive.$$" "$archive"
    else
        # Everything works without an archive, only slower; the next build tries again.
        : >"$archive"
    fi
    rm -f "$archive.$$"
    trained_for >"$archive.for"
}

# Builds only what is missing when $build_when is "missing": sources may change beside a program that runs for hours.
prepare() {
    need java
    if [ ! -f "$jar" ] || { [ "${build_when:-older}" = older ] && is_older_than_sources; }; then build; fi
    train_once
    [ ! -s "$archive" ] || flags+=("-XX:SharedArchiveFile=$archive")
    command=(java "${flags[@]}" -cp "$target/lib/*" "$main" "$@")
    if [ -n "${STIRTIDE_PRINT_COMMAND:-}" ]; then
        printf '%s\n' "${command[@]}"
        exit 0
    fi
}

launch() {
    prepare "$@"
    exec "${command[@]}"
}

# Called after the program was killed, with its process id. Scripts redefine it.
clean_up() { :; }

launch_on_terminal() {
    { [ -t 0 ] && [ -t 1 ]; } || launch "$@"
    prepare "$@"
    local before child code=0 interrupted=
    before=$(stty -g)
    "${command[@]}" <&0 &
    child=$!
    trap 'interrupted=130; kill -TERM "$child" 2>/dev/null || true' INT
    trap 'kill -TERM "$child" 2>/dev/null || true' TERM HUP
    # A trapped signal ends the first wait early; the program is then still on its way out.
    wait "$child" || code=$?
    while kill -0 "$child" 2>/dev/null; do code=0; wait "$child" || code=$?; done
    # Above 128 a signal ended it. After SIGKILL it restored nothing; after the others doing it twice does no harm.
    if [ "$code" -gt 128 ]; then
        stty "$before" 2>/dev/null || true
        printf '\033[?2026l\033[0m\033[?25h\033[?2004l\033[?1049l' 2>/dev/null || true
        clean_up "$child"
    fi
    exit "${interrupted:-$code}"
}
