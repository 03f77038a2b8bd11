/* SPDX-License-Identifier: MIT */
/*
 * The yardstick of the benchmark of the command: json-c parses each line and prints it again.
 */
#include <json-c/json.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

int main(void)
{
    static char line[1 << 16];
    struct json_tokener *tokener = json_tokener_new();
    while (tokener != NULL && fgets(line, sizeof line, stdin) != NULL) {
        json_tokener_reset(tokener);
        struct json_object *object =
            json_tokener_parse_ex(tokener, line, (int)strlen(line));
        if (object == NULL) {
            return 1;
        }
        puts(json_object_to_json_string_ext(object, JSON_C_TO_STRING_PLAIN));
        json_object_put(object);
    }
    json_tokener_free(tokener);
    return 0;
}
