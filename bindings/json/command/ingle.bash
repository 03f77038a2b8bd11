# SPDX-License-Identifier: MIT
# Completion of the ingle command for bash. Verbs, options and words are those of its help.

# The words of a choice in the help "$1": those with bars between, in the line that begins "$2".
_ingle_choices()
{
    printf '%s\n' "$1" | sed -n "s/^$2 \([a-z][a-z|-]*|[a-z|-]*\).*\$/\1/p" | tr '|' ' '
}

# What the entries of the catalogue "$2" are called, by their member "$3".
_ingle_names()
{
    "$1" list "$2" 2>/dev/null | sed -n "s/^    \"$3\": \"\(.*\)\",\$/\1/p" | awk '!seen[$0]++'
}

# The readings with each of their options: `hearth-steps=round-up`.
_ingle_readings()
{
    "$1" list readings 2>/dev/null | sed -n \
        -e '/^    "id": /{s/^    "id": "\(.*\)",$/\1/;h;}' \
        -e '/^        "id": /{s/^        "id": "\(.*\)",$/=\1/;G;s/^\(.*\)\n\(.*\)$/\2\1/;p;}'
}

_ingle()
{
    local command=${COMP_WORDS[0]} word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]}
    local verb='' words help i
    COMPREPLY=()
    # Where `=` parts words, what is completed is the option behind it.
    for ((i = COMP_CWORD; i > 2 && i > COMP_CWORD - 2; i--)); do
        if [[ ${COMP_WORDS[i]} == = && ${COMP_WORDS[i-2]} == --reading ]]; then
            words=$(_ingle_readings "$command" | sed -n "s/^${COMP_WORDS[i-1]}=//p")
            mapfile -t COMPREPLY < <(compgen -W "$words" -- "${word#=}")
            return 0
        fi
    done
    for ((i = 1; i < COMP_CWORD; i++)); do
        if [[ ${COMP_WORDS[i]} != -* ]]; then
            verb=${COMP_WORDS[i]}
            break
        fi
    done
    help=$("$command" ${verb:+"$verb"} --help 2>/dev/null) || return 0
    help=${help//$'|\n             '/|} # long lines of the help go on below, indented
    help=${help//$'\n             '/ }
    case $before in
    --standard)
        words=$(_ingle_names "$command" standards id)
        ;;
    --quantity | --with)
        words=$(_ingle_names "$command" quantities id)
        ;;
    --rule)
        words=$(_ingle_names "$command" rules rule)
        ;;
    --reading)
        words=$(_ingle_readings "$command")
        ;;
    --amendments)
        mapfile -t COMPREPLY < <(compgen -f -- "$word")
        return 0
        ;;
    --*)
        words=$(_ingle_choices "$help" "  $before")
        ;;
    esac
    if [[ -z $words && $word == -* ]]; then
        words=$(printf '%s\n' "$help" | sed -n 's/^  \(-h, \)\{0,1\}\(--[a-z-]*\).*$/\2/p')
    elif [[ -z $words && -z $verb ]]; then
        words=$(printf '%s\n' "$help" | sed -n 's/^\(Usage:\|      \) ingle \([a-z]*\) .*$/\2/p')
    elif [[ -z $words ]]; then
        words=$(_ingle_choices "$help" 'Usage:.*\]\.\.\.')
    fi
    if [[ -n $words ]]; then
        mapfile -t COMPREPLY < <(compgen -W "$words" -- "$word")
    elif [[ $help == Usage:*FILE* ]]; then
        mapfile -t COMPREPLY < <(compgen -f -- "$word")
    fi
}

complete -o filenames -F _ingle ingle
