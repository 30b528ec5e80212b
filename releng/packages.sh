# Sourced: need_packages installs the Debian packages that building and drawing pictures need, and only the missing ones.

need_packages() {
  local missing=() version
  version=$(javac -version 2>&1 | sed -n 's/^javac \([0-9]*\).*/\1/p') || true
  [ "${version:-0}" -ge 17 ] || missing+=(openjdk-17-jdk-headless)
  command -v mvn >/dev/null || missing+=(maven)
  command -v git >/dev/null || missing+=(git)
  # labels in pictures: the JDK draws no text without fontconfig and one font
  command -v fc-list >/dev/null || missing+=(fontconfig)
  [ -n "$(fc-list 2>/dev/null | head -n 1)" ] || missing+=(fonts-dejavu-core)
  missing+=($(for package in "$@"; do dpkg -s "$package" >/dev/null 2>&1 || echo "$package"; done))
  [ ${#missing[@]} -gt 0 ] || return 0
  if [ "$(id -u)" != 0 ] || ! command -v apt-get >/dev/null; then
    echo "cairnfield: missing, please install: ${missing[*]} (names as in Debian)" >&2
    return 1
  fi
  echo "cairnfield: installing ${missing[*]}" >&2
  { apt-get update -qq &&
    DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}"; } >/dev/null </dev/null || {
    echo "cairnfield: could not install: ${missing[*]}" >&2
    return 1
  }
}
