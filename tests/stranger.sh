#!/usr/bin/env bash
# The README as a stranger follows it: a new user with an empty home, the system's Python, a fresh clone, every
# command as it stands there; the ones after the installation without a network where the system allows that.
# Needs root, to make the user and to take it away again. Ends with the sheets that were printed.
set -euo pipefail
cd "$(dirname "$0")/.."

user="stranger-$$"
useradd --create-home --shell /bin/bash "$user"
trap 'userdel --remove "$user" 2>/dev/null || true' EXIT
home=$(getent passwd "$user" | cut -d: -f6)
git clone --quiet . "$home/setwright"
chown -R "$user": "$home/setwright"

as_stranger() {
  "${shut_in[@]}" setpriv --reuid "$user" --regid "$user" --clear-groups \
    env --ignore-environment --chdir "$home/setwright" HOME="$home" LANG=C.UTF-8 \
    PATH="$home/setwright/.venv/bin:/usr/bin:/bin" bash -c "$1" </dev/null
}

step() { printf '%4d s  %s\n' "$SECONDS" "$1"; }

shut_in=()
step "install, check, print: the README's first command"
as_stranger "$(grep -m 1 'setwright sheet examples' README.md)"

if unshare --net true 2>/dev/null; then shut_in=(unshare --net); fi
as_stranger "sed -n '/^# thursday.yaml/,/^\`\`\`/{/^\`\`\`/!p}' README.md > thursday.yaml"
sed -n 's/^\$ //p' README.md | while read -r command; do
  step "$command"
  status=0
  as_stranger "$command" >"$home/said" 2>&1 || status=$?
  if [ "$status" -gt 1 ] || grep -q Traceback "$home/said"; then
    cat "$home/said"
    exit 1
  fi
done
step "printed:"
find "$home"/setwright/{sheets,crew} -name '*.html' -printf '        %f, %s bytes\n' | sort
