# Shared by measurements in Java; not to be run by itself. The caller stands in the root of the checkout.
measure() {
    mvn -q -B -ntp -Pfast -pl planner-service -am test-compile dependency:build-classpath \
        -Dmdep.outputFile=target/measure.classpath -Dmdep.includeScope=test >&2
    exec java -Xmx512m -XX:+UseSerialGC --enable-native-access=ALL-UNNAMED \
        -cp "planner-service/target/classes:planner-service/target/test-classes:$(cat planner-service/target/measure.classpath)" \
        "$@"
}
