# SPDX-License-Identifier: MIT
# Completion of the ingle command for bash. Verbs, options and words are those of its help.

# The words of a choice in the help "$1": those with bars between, in the line that begins "$2".
_ingle_choices()
{
    printf '%s\n' "$1" | sed -n "s/^$2 \([a-z][a-z|-]*|[a-z|-]*\).*\$/\1/p" | tr '|' ' '
}

_ingle_standards()
{
    "$1" list standards 2>/dev/null | sed -n 's/^    "id": "\(.*\)",$/\1/p'
}

_ingle()
{
    local command=${COMP_WORDS[0]} word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]}
    local verb='' words help i
    COMPREPLY=()
    for ((i = 1; i < COMP_CWORD; i++)); do
        if [[ ${COMP_WORDS[i]} != -* ]]; then
            verb=${COMP_WORDS[i]}
            break
        fi
    done
    help=$("$command" ${verb:+"$verb"} --help 2>/dev/null) || return 0
    case $before in
    --standard)
        words=$(_ingle_standards "$command")
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
    elif [[ $verb == check ]]; then
        mapfile -t COMPREPLY < <(compgen -f -- "$word")
    fi
}

complete -o filenames -F _ingle ingle
