# Finds a JDK 17 or newer and Maven 3.8.1 or newer. Sourced by the other scripts, POSIX sh.

# File modes go into the jars, so the builder's own umask must not: two builds give one archive.
umask 022

say() { printf '%s\n' "$*" >&2; }

refuse() {
  say "$*"
  exit 2
}

# Sets JAVA_HOME to the first JDK that will do: JAVA_HOME itself, the java on the PATH, and the
# java beside the javac on the PATH (a JRE may stand before a JDK).
find_jdk() {
  found_instead=
  for java_command in \
    "${JAVA_HOME:+$JAVA_HOME/bin/java}" \
    "$(command -v java || :)" \
    "$(beside_javac)"; do
    [ -n "$java_command" ] && [ -x "$java_command" ] || continue
    java_facts=$("$java_command" -XshowSettings:properties -version 2>&1) || continue
    java_version=$(printf '%s\n' "$java_facts" | sed -n 's/.* version "\([0-9._]*\).*/\1/p' | head -n 1)
    java_version=${java_version#1.}
    java_version=${java_version%%[!0-9]*}
    java_folder=$(printf '%s\n' "$java_facts" | sed -n 's/^ *java\.home = //p')
    if [ "${java_version:-0}" -ge 17 ] && [ -n "$java_folder" ] && [ -x "$java_folder/bin/javac" ]; then
      JAVA_HOME=$java_folder
      export JAVA_HOME
      return 0
    fi
    if [ "${java_version:-0}" -ge 17 ]; then
      found_instead=${found_instead:-"$java_command is Java $java_version without its compiler"}
    else
      found_instead=${found_instead:-"$java_command is Java ${java_version:-of an unknown version}"}
    fi
  done
  refuse "Leafturn is built with a JDK 17 or newer, but ${found_instead:-no java was found}; install one (on Debian: openjdk-17-jdk-headless) or set JAVA_HOME to it."
}

beside_javac() {
  javac_command=$(command -v javac) || return 0
  javac_command=$(readlink -f "$javac_command" 2>/dev/null || printf '%s' "$javac_command")
  printf '%s/java' "$(dirname "$javac_command")"
}

find_maven() {
  command -v mvn >/dev/null ||
    refuse "Leafturn is built with Maven 3.8.1 or newer, but no mvn is on the PATH; install it (on Debian: maven)."
  maven_version=$(mvn -B -v 2>/dev/null | sed -n 's/.*Apache Maven \([0-9][0-9.]*\).*/\1/p' | head -n 1)
  printf '%s\n' "${maven_version:-0}" |
    awk -F. '{ exit !($1 * 1000000 + $2 * 1000 + $3 >= 3008001) }' ||
    refuse "Leafturn is built with Maven 3.8.1 or newer, but $(command -v mvn) is ${maven_version:-of an unknown version}; install a newer one (on Debian: maven)."
}
