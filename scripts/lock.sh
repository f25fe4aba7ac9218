# One build at a time in this tree. Sourced by the scripts that build, POSIX sh; needs toolchain.sh.

lock=target/build-lock
running=

# Waits until no other start builds in this tree, then keeps others out until this one ends.
take_lock() {
  mkdir -p target || refuse "Leafturn cannot be built here: $(pwd) is not writable."
  told=
  until mkdir "$lock" 2>/dev/null; do
    if holders_are_gone; then
      # Only one of those who wait can move the lock away.
      mv "$lock" "$lock.$$" 2>/dev/null && rm -rf "$lock.$$"
      continue
    fi
    [ -n "$told" ] || say "Leafturn is being built by another start; waiting for it."
    told=yes
    sleep 1
  done
  trap release_lock EXIT
  trap 'stop 129' HUP
  trap 'stop 130' INT
  trap 'stop 143' TERM
  echo $$ >"$lock/processes"
}

# A lock without a name was taken this moment.
holders_are_gone() {
  holders=$(cat "$lock/processes" 2>/dev/null)
  [ -n "$holders" ] || return 1
  for holder in $holders; do
    ! kill -0 "$holder" 2>/dev/null || return 1
  done
}

release_lock() {
  rm -rf "$lock"
}

# Runs a command as a holder of the lock. It is stopped when this start is told to stop; should
# this start be killed outright, the lock stays until the command has ended too.
run_locked() {
  "$@" </dev/null &
  running=$!
  echo "$running" >>"$lock/processes"
  wait "$running"
}

stop() {
  if [ -n "$running" ]; then
    kill "$running" 2>/dev/null
    wait "$running" 2>/dev/null
  fi
  exit "$1"
}
