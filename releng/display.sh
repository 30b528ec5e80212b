# Sourced: private_display starts a display of its own for tests, of the size in $screen if that is set, with a window manager, and
# ends both when the script ends.

# Packages that the workbench itself needs; the library has other names in other releases of Debian.
need_toolkit() {
  ldconfig -p | grep -q 'libgtk-3\.so\.0' && return
  need_packages "$(apt-cache pkgnames libgtk-3-0 2>/dev/null | grep -x -e libgtk-3-0t64 -e libgtk-3-0 | tail -n 1 | grep . || echo libgtk-3-0)"
}

private_display() {
  local folder
  folder=$(mktemp -d)
  # the server picks a free number itself, so that one that is there already is never used by mistake
  Xvfb -displayfd 3 -screen 0 "${screen:-1600x1000}x24" -nolisten tcp 3>"$folder/number" 2>"$folder/log" 9>&- &
  display_processes=$!
  trap 'kill $display_processes 2>/dev/null || true; rm -rf "'"$folder"'"' EXIT
  for _ in $(seq 100); do
    [ ! -s "$folder/number" ] || break
    sleep 0.1
  done
  [ -s "$folder/number" ] || { cat "$folder/log" >&2; return 1; }
  export DISPLAY=":$(cat "$folder/number")" GDK_BACKEND=x11
  openbox >/dev/null 2>&1 9>&- &
  display_processes="$display_processes $!"
}
