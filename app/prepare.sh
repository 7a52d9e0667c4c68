# Shared by app/run, tests/run and tests/long: packages, configuring, building.
# Sourced, not run. Expects `set -euo pipefail` and the root of the repository in $root.
# shellcheck shell=bash

: "${root:?the script that sources this sets root}"

# Qt reads file names in the encoding of the locale; a bare machine has none set.
case "${LC_ALL:-${LC_CTYPE:-${LANG:-}}}" in
    *[Uu][Tt][Ff]*8*) ;;
    *) export LC_ALL=C.UTF-8 ;;
esac

# Outside a desktop session there is no folder for a user's run-time files, and Qt complains.
if [[ -z ${XDG_RUNTIME_DIR:-} ]]; then
    export XDG_RUNTIME_DIR=$root/build/runtime
    mkdir -p "$XDG_RUNTIME_DIR"
    chmod 700 "$XDG_RUNTIME_DIR"
fi

jobs=$(nproc)
# Optimised, with line numbers only: half the time and room of full debugging information. The
# scripts that share a build folder must agree on it, or each would compile everything anew.
# shellcheck disable=SC2034
build_type=("-DCMAKE_BUILD_TYPE=RelWithDebInfo" "-DCMAKE_CXX_FLAGS_RELWITHDEBINFO=-O2 -g1 -DNDEBUG")

heading() {
    printf '\n== %s\n' "$*"
}

# fail SENTENCE [LOG [WHAT_TO_DO]]: ends the script, with the end of the log before the sentence.
fail() {
    local sentence=$1 log=${2:-} remedy=${3:-}
    {
        if [[ -n $log && -s $log ]]; then
            printf -- '---- end of %s\n' "$log"
            tail -n 40 "$log"
            printf -- '----\n'
        fi
        printf '%s: %s\n' "$(basename "$0")" "$sentence"
        if [[ -n $log ]]; then
            printf '  The whole log is %s\n' "$log"
        fi
        if [[ -n $remedy ]]; then
            printf '  %s\n' "$remedy"
        fi
    } >&2
    exit 1
}

# is_debian: whether packages can be fetched with apt-get here.
is_debian() {
    [[ -f /etc/debian_version ]] && command -v apt-get >/dev/null && command -v dpkg-query >/dev/null
}

# is_proven_system: Debian 12, whose compiler is known to raise no warning.
is_proven_system() {
    [[ -r /etc/os-release ]] && (
        # shellcheck disable=SC1091
        . /etc/os-release
        [[ ${ID:-} == debian && ${VERSION_ID:-} == 12 ]]
    )
}

# wanted_packages FILE...: the names in the lists.
wanted_packages() {
    sed -e 's/#.*//' -e 's/[[:space:]]*$//' -e '/^$/d' -- "$@"
}

# missing_packages NAME...: those of them that are not installed.
missing_packages() {
    local installed name
    installed=$(dpkg-query -W -f='${db:Status-Status} ${Package}\n' "$@" 2>/dev/null |
        sed -n 's/^installed //p' || true)
    for name in "$@"; do
        if ! grep -qxF -- "$name" <<<"$installed"; then
            printf '%s\n' "$name"
        fi
    done
}

# as_root COMMAND...: runs it with the rights that installing needs.
as_root() {
    if [[ $(id -u) == 0 ]]; then
        "$@"
    else
        sudo -- "$@"
    fi
}

apt() {
    as_root env DEBIAN_FRONTEND=noninteractive apt-get -q -y -o DPkg::Lock::Timeout=300 \
        -o Dpkg::Use-Pty=0 "$@"
}

# install_packages LIST...: installs what is missing of the lists; silent and fast when nothing is.
install_packages() {
    local -a wanted missing
    mapfile -t wanted < <(wanted_packages "$@")
    if ! is_debian; then
        printf 'This system has no apt-get: nothing is installed. Needed are (by their names in Debian 12):\n  %s\n' \
            "${wanted[*]}"
        return
    fi
    mapfile -t missing < <(missing_packages "${wanted[@]}")
    if ((${#missing[@]} == 0)); then
        return
    fi

    heading "Installing ${#missing[@]} packages: ${missing[*]}"
    if [[ $(id -u) != 0 ]] && ! command -v sudo >/dev/null; then
        fail "these packages are missing, and there is no sudo to install them with." "" \
            "As root, run: apt-get install --no-install-recommends ${missing[*]}"
    fi
    mkdir -p "$root/build"
    local log=$root/build/packages.log
    : >"$log"
    # The lists of a fresh machine are empty, those of an old one name files that are gone.
    if ! apt install --simulate --no-install-recommends "${missing[@]}" >>"$log" 2>&1; then
        printf 'Reading the package lists ...\n'
        apt update >>"$log" 2>&1 ||
            fail "the package lists could not be read." "$log" \
                "Check the network and /etc/apt/sources.list, then run this again."
    fi
    if ! fetch_and_unpack "$log" "${missing[@]}"; then
        printf 'Reading the package lists again ...\n'
        apt update >>"$log" 2>&1 || true
        fetch_and_unpack "$log" "${missing[@]}" ||
            fail "packages could not be installed." "$log" \
                "Check the network and the free room on the disk, then run this again."
    fi
    mapfile -t missing < <(missing_packages "${wanted[@]}")
    if ((${#missing[@]} > 0)); then
        fail "these packages are still missing: ${missing[*]}" "$log" "Install them by hand."
    fi
}

# fetch_and_unpack LOG NAME...: shows one moving line of what apt-get is doing.
fetch_and_unpack() {
    local log=$1
    shift
    apt install --no-install-recommends "$@" 2>&1 | tee -a "$log" |
        show_progress '^(Get:|Unpacking |Setting up )'
}

# show_progress PATTERN: of the lines read, shows those that match: on a terminal on one moving
# line, elsewhere every fiftieth.
show_progress() {
    local pattern=$1 line count=0 width
    if [[ -t 1 ]]; then
        width=$(tput cols 2>/dev/null || echo 80)
        while IFS= read -r line; do
            if [[ $line =~ $pattern ]]; then
                printf '\r\033[K%s' "${line:0:width-1}"
            fi
        done
        printf '\r\033[K'
    else
        while IFS= read -r line; do
            if [[ $line =~ $pattern ]]; then
                if ((count % 50 == 0)); then
                    printf '%s\n' "$line"
                fi
                count=$((count + 1))
            fi
        done
    fi
}

# configure FOLDER OPTION...: asks CMake only when the folder is new or an option differs.
configure() {
    local folder=$1 log=$1/configure.log wanted
    shift
    wanted="$*"
    mkdir -p "$folder"
    if [[ -f $folder/build.ninja && -f $folder/options && $(<"$folder/options") == "$wanted" ]]; then
        return
    fi
    heading "Configuring ${folder#"$root"/}"
    rm -f "$folder/options"
    cmake -S "$root" -B "$folder" -G Ninja "$@" >"$log" 2>&1 ||
        fail "CMake could not configure the build." "$log" \
            "If a package is named above, install it; if the folder was moved, remove $folder."
    printf '%s' "$wanted" >"$folder/options"
}

# build FOLDER [TARGET...]: with as many jobs as cores, leaving the machine usable.
build() {
    local folder=$1 log=$1/build.log
    shift
    if nice -n 10 ninja -C "$folder" -n "$@" 2>/dev/null | grep -q 'no work to do'; then
        return
    fi
    heading "Building ${folder#"$root"/} with $jobs jobs"
    if ! NINJA_STATUS='[%f/%t] ' nice -n 10 ninja -C "$folder" -j "$jobs" "$@" 2>&1 | tee "$log" |
        show_progress '^\[[0-9]+/[0-9]+\]'; then
        printf '\n' >&2
        grep -E -A 12 '(error:|FAILED:|undefined reference)' "$log" | head -n 60 >&2 ||
            tail -n 40 "$log" >&2
        fail "the build failed; its first errors stand above." "" "The whole log is $log"
    fi
}
