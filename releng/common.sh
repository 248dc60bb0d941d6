# shellcheck shell=bash
# What the scripts of this folder share. Sourced, not run.

root="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
me="releng/$(basename "$0")"
products="$root/releng/product/target/products/org.cantonment.workbench.product"

say() { echo "$me: $*" >&2; }
fail() { echo "$me: $*" >&2; exit 1; }

# have COMMAND-OR-LIBRARY: whether it is on this machine.
have() {
  case "$1" in
    lib*) [ -n "$(find /usr/lib /lib -name "$1" -print -quit 2>/dev/null)" ] ;;
    *) command -v "$1" >/dev/null 2>&1 ;;
  esac
}

# need THING=PACKAGE…: installs the Debian packages of those things that are not there.
need() {
  local pair missing=()
  for pair in "$@"; do
    have "${pair%%=*}" || missing+=("${pair#*=}")
  done
  if [ "${#missing[@]}" -eq 0 ]; then
    return
  fi
  have apt-get || fail "please install: ${missing[*]} (Debian's names), then try again."
  local as=()
  if [ "$(id -u)" -ne 0 ]; then
    have sudo || fail "please let an administrator run: apt-get install ${missing[*]}"
    as=(sudo)
  fi
  say "installing ${missing[*]}"
  "${as[@]}" apt-get update -qq >&2 || fail "the package lists could not be fetched; check the connection and try again."
  "${as[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}" >&2 \
    || fail "could not install ${missing[*]}; see above."
}

need_java() { need javac=openjdk-17-jdk-headless mvn=maven; }

# product: the folder of this machine's product.
product() {
  case "$(uname -s)-$(uname -m)" in
    Linux-x86_64) echo "$products/linux/gtk/x86_64/cantonment" ;;
    Darwin-x86_64) echo "$products/macosx/cocoa/x86_64/Cantonment.app/Contents/Eclipse" ;;
    Darwin-arm64) echo "$products/macosx/cocoa/aarch64/Cantonment.app/Contents/Eclipse" ;;
    *) fail "there is no product for this kind of machine ($(uname -s) $(uname -m)); Linux x86_64 and macOS have one." ;;
  esac
}

# stale: whether the product is missing or older than a source.
stale() {
  local built="$root/releng/product/target/built"
  [ -f "$built" ] && [ -d "$(product)/plugins" ] || return 0
  [ -n "$(find "$root/pom.xml" "$root/.mvn" "$root/bundles" "$root/features" "$root/releng" \
      "$root/examples/lake-club-checks" \
      \( -name target -o -name bin -o -name src-gen -o -name xtext-gen -o -name template -o -name '*.tests' -o -name house \) -prune \
      -o -type f ! -name '.polyglot*' ! -name '.tycho*' -newer "$built" -print -quit)" ]
}

# build: makes the product, without tests; everything it says goes to stderr.
build() {
  need_java
  say "building (the first time fetches about 300 MB and takes some minutes)"
  local began
  began="$(mktemp)"
  "$root/releng/mvn" -B -q -ntp verify -DskipTests -DnoArchives -pl releng/product -am >&2 \
    || { rm -f "$began"; fail "the build failed; see above, or run releng/verify for the whole story."; }
  mv "$began" "$root/releng/product/target/built"
}
