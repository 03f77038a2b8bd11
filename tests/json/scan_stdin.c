/* SPDX-License-Identifier: MIT */
/*
 * Scans the documents that come on standard input, each as its length in decimal, a line feed and
 * its bytes. Answers each with a line "status nodes" and, if it is done, a line "kind start length
 * parent next pointer" for every node, the pointer in hexadecimal behind an x.
 *
 * Usage: scan_stdin DEPTH_LIMIT
 */
#include "strict/scan.h"

#include <stdio.h>
#include <stdlib.h>

static void print_node(const struct json_scan *scan, size_t index)
{
    static char pointer[65536];
    const struct json_node *node = &scan->nodes[index];
    size_t length = json_scan_pointer(scan, index, pointer, sizeof pointer);
    long parent = node->parent == JSON_NO_NODE ? -1 : (long)node->parent;
    printf("%d %lu %lu %ld %lu x", node->kind, (unsigned long)node->start,
           (unsigned long)node->length, parent, (unsigned long)node->next);
    for (size_t i = 0; i < length && i < sizeof pointer; i++) {
        printf("%02x", (unsigned)(unsigned char)pointer[i]);
    }
    putchar('\n');
}

static void answer(struct json_scan *scan, const char *bytes, size_t length, unsigned depth_limit)
{
    ingle_status status = json_scan_document(scan, bytes, length, depth_limit);
    printf("%s %zu\n", ingle_status_name(status), status == INGLE_OK ? scan->node_count : 0);
    for (size_t i = 0; status == INGLE_OK && i < scan->node_count; i++) {
        print_node(scan, i);
    }
}

int main(int argc, char **argv)
{
    if (argc != 2) {
        fputs("usage: scan_stdin DEPTH_LIMIT\n", stderr);
        return 2;
    }
    unsigned depth_limit = (unsigned)strtoul(argv[1], NULL, 10);
    struct json_scan scan;
    json_scan_init(&scan, NULL);
    size_t length;
    while (scanf("%zu", &length) == 1) {
        char *bytes = malloc(length > 0 ? length : 1);
        if (bytes == NULL || getchar() != '\n' || fread(bytes, 1, length, stdin) != length) {
            fputs("scan_stdin: the input is cut\n", stderr);
            return 2;
        }
        answer(&scan, bytes, length, depth_limit);
        free(bytes);
    }
    json_scan_free(&scan);
    return 0;
}
