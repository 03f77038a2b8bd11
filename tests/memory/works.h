/* SPDX-License-Identifier: MIT */
/*
 * A work is an object, a call that fills it and calls that write it out. It is done with memory
 * that fails at each allocation in turn, once and from there on: the call says that it was memory,
 * what was written till then is the beginning of the whole, nothing leaks, and with memory the same
 * object does the same as if nothing had been.
 */
#ifndef TESTS_MEMORY_WORKS_H
#define TESTS_MEMORY_WORKS_H

#include "../check/fireplaces.h"

enum { SAID = 1 << 21, WRITINGS = 16 };

/* What was written, one writing after the other. */
struct said {
    char text[SAID];
    size_t length;
};

struct work {
    struct memory memory;
    ingle_allocator allocator;
    void *object;
    struct said *said;
};

struct trade {
    ingle_status (*start)(struct work *work);
    ingle_status (*fill)(struct work *work);
    /* What the object says of the failure, "" before one; NULL where it has no sentence for it. */
    const char *(*error_text)(const void *object);
    /* Whether it holds nothing, as it should after a failure to fill it. */
    bool (*is_empty)(const void *object);
    void (*give_back)(void *object);
    ingle_status (*writings[WRITINGS])(struct work *work); /* NULL after the last */
    size_t least_failures; /* so many allocations it is worth: else the test sees nothing */
};

static int32_t keep(void *context, const char *text, size_t length)
{
    struct said *said = context;
    assert_true(length > 0 && said->length + length < SAID);
    memcpy(said->text + said->length, text, length);
    said->length += length;
    said->text[said->length] = '\0';
    return 0;
}

static struct said whole, now_said;

/* Whether it failed for want of memory, and memory is there again. */
static bool wanted(struct work *work, ingle_status status, bool failed_before)
{
    if (status != INGLE_ERROR_MEMORY) {
        assert_int_equal(status, INGLE_OK);
        assert_int_equal(work->memory.failed, failed_before); /* none passes in silence */
        return false;
    }
    assert_true(work->memory.failed && !failed_before);
    work->memory.fail_at = 0;
    return true;
}

static void start_work(struct work *work, const struct trade *trade)
{
    if (wanted(work, trade->start(work), work->memory.failed)) {
        assert_null(work->object);
        assert_int_equal(work->memory.live, 0);
        assert_int_equal(trade->start(work), INGLE_OK);
    }
    assert_non_null(work->object);
}

static void fill_work(struct work *work, const struct trade *trade)
{
    bool failed = work->memory.failed;
    if (!wanted(work, trade->fill(work), failed)) {
        return;
    }
    assert_true(trade->is_empty(work->object));
    if (trade->error_text != NULL) {
        assert_non_null(
            strstr(trade->error_text(work->object), ingle_status_text(INGLE_ERROR_MEMORY)));
    }
    assert_int_equal(trade->fill(work), INGLE_OK);
    if (trade->error_text != NULL) {
        assert_string_equal(trade->error_text(work->object), "");
    }
}

static void write_work(struct work *work, ingle_status (*writing)(struct work *work))
{
    size_t before = work->said->length;
    bool failed = work->memory.failed;
    if (wanted(work, writing(work), failed)) {
        assert_memory_equal(work->said->text, whole.text, work->said->length);
        work->said->length = before;
        assert_int_equal(writing(work), INGLE_OK);
    }
    assert_true(work->said->length > before);
}

static void do_work(struct work *work, const struct trade *trade)
{
    work->allocator = memory_allocator(&work->memory);
    work->said->length = 0;
    start_work(work, trade);
    fill_work(work, trade);
    assert_false(trade->is_empty(work->object));
    for (size_t i = 0; i < WRITINGS && trade->writings[i] != NULL; i++) {
        write_work(work, trade->writings[i]);
    }
    trade->give_back(work->object);
    assert_int_equal(work->memory.live, 0);
}

/* An object that saw a failure and is filled no more is given back whole. */
static void leave_work(const struct trade *trade, size_t fail_at)
{
    struct work work = {.memory = {.fail_at = fail_at, .fail_on = true}, .said = &now_said};
    work.allocator = memory_allocator(&work.memory);
    work.said->length = 0;
    ingle_status status = trade->start(&work);
    if (status == INGLE_OK) {
        status = trade->fill(&work);
        for (size_t i = 0; status == INGLE_OK && trade->writings[i] != NULL; i++) {
            status = trade->writings[i](&work);
        }
        trade->give_back(work.object);
    }
    assert_int_equal(status, INGLE_ERROR_MEMORY);
    assert_int_equal(work.memory.live, 0);
}

static inline void fail_at_every_allocation(const struct trade *trade)
{
    struct work without = {.said = &whole};
    do_work(&without, trade);
    size_t calls = without.memory.calls;
    size_t failures = 0;
    assert_true(calls >= trade->least_failures);
    for (size_t n = 1; n <= 2 * (calls + 1); n++) {
        struct work work = {.memory = {.fail_at = (n + 1) / 2, .fail_on = n % 2 == 0},
                            .said = &now_said};
        do_work(&work, trade);
        failures += work.memory.failed;
        assert_int_equal(now_said.length, whole.length);
        assert_memory_equal(now_said.text, whole.text, whole.length);
    }
    assert_int_equal(failures, 2 * calls);
    for (size_t n = 1; n <= calls; n++) {
        leave_work(trade, n);
    }
}

/* For calls that ask for no memory at all: their owner's is gone, and they say the same. */
static inline void write_without_memory(struct work *work, ingle_status (*writing)(struct work *))
{
    work->said = &whole;
    whole.length = now_said.length = 0;
    assert_int_equal(writing(work), INGLE_OK);
    assert_true(whole.length > 0);
    work->said = &now_said;
    size_t calls = work->memory.calls;
    work->memory.fail_at = calls + 1;
    work->memory.fail_on = true;
    assert_int_equal(writing(work), INGLE_OK);
    assert_int_equal(work->memory.calls, calls);
    work->memory.fail_at = 0;
    assert_int_equal(now_said.length, whole.length);
    assert_memory_equal(now_said.text, whole.text, whole.length);
}

#endif
