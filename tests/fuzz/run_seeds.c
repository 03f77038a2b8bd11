/* SPDX-License-Identifier: MIT */
/*
 * Runs a fuzz target once on each file of the folders named: its seeds as a plain test.
 */
#include <dirent.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

static uint8_t *read_file(const char *path, size_t *size)
{
    FILE *file = fopen(path, "rb");
    if (file == NULL || fseek(file, 0, SEEK_END) != 0) {
        perror(path);
        exit(1);
    }
    long end = ftell(file);
    *size = end > 0 ? (size_t)end : 0;
    uint8_t *data = malloc(*size > 0 ? *size : 1); /* of the very size, for the sanitizers */
    rewind(file);
    if (data == NULL || fread(data, 1, *size, file) != *size) {
        perror(path);
        exit(1);
    }
    fclose(file);
    return data;
}

static int run_folder(const char *folder)
{
    DIR *directory = opendir(folder);
    if (directory == NULL) {
        perror(folder);
        exit(1);
    }
    int count = 0;
    const struct dirent *entry;
    while ((entry = readdir(directory)) != NULL) {
        char path[4096];
        if (entry->d_name[0] == '.') {
            continue;
        }
        if (snprintf(path, sizeof path, "%s/%s", folder, entry->d_name) >= (int)sizeof path) {
            fprintf(stderr, "%s: the path is too long\n", entry->d_name);
            exit(1);
        }
        size_t size;
        uint8_t *data = read_file(path, &size);
        LLVMFuzzerTestOneInput(data, size);
        free(data);
        count++;
    }
    closedir(directory);
    return count;
}

int main(int argc, char **argv)
{
    int count = 0;
    for (int i = 1; i < argc; i++) {
        count += run_folder(argv[i]);
    }
    printf("%d seeds\n", count);
    return count > 0 ? 0 : 1; /* no seeds, no test */
}
