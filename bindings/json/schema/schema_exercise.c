/* SPDX-License-Identifier: MIT */
/*
 * The schema of exercises.
 */
#include "schema/schema.h"

#include <ingle/ingle.h>

#define COUNT(names) (sizeof names / sizeof names[0])

static void write_number(struct json_writer *out, const char *property, int64_t least,
                         int64_t most)
{
    json_open_object(out, property);
    json_text(out, "type", "integer");
    json_integer(out, "minimum", least);
    if (most > 0) {
        json_integer(out, "maximum", most);
    }
    json_close_object(out);
}

/* What is in a survey stands in the schema of surveys, thirty times as long as this one. */
static void write_document(struct json_writer *out)
{
    static const char *const required[] = {"standards", "survey"};
    schema_open_object(out, "document",
                       "The measurements: a survey document as `ingle schema survey` has it.");
    schema_open_array(out, "standards", NULL);
    json_open_object(out, "items");
    schema_enum(out, schema_standard_at);
    json_close_object(out);
    schema_close_array(out);
    json_open_object(out, "survey");
    json_text(out, "type", "object");
    json_close_object(out);
    schema_close_object(out, required, COUNT(required));
}

static void write_questions(struct json_writer *out)
{
    static const char *const required[] = {"standard", "rule", "subject", "label"};
    schema_open_array(out, "questions", "What is asked, in the order of the answers.");
    schema_open_object(out, "items", NULL);
    schema_standard(out);
    schema_type(out, "rule", "string", NULL);
    schema_subject(out, "subject");
    schema_type(out, "label", "string", "What it is about, in words.");
    schema_close_object(out, required, COUNT(required));
    schema_close_array(out);
}

/* The problem, or the answers, or both. */
static void write_parts(struct json_writer *out)
{
    static const char *const problem[] = {"document", "questions"};
    static const char *const answers[] = {"answers"};
    json_open_array(out, "anyOf");
    json_open_object(out, NULL);
    schema_required(out, problem, COUNT(problem));
    json_close_object(out);
    json_open_object(out, NULL);
    schema_required(out, answers, COUNT(answers));
    json_close_object(out);
    json_close_array(out);
    json_open_object(out, "dependentRequired");
    for (size_t i = 0; i < COUNT(problem); i++) {
        json_open_array(out, problem[i]);
        json_text(out, NULL, problem[1 - i]);
        json_close_array(out);
    }
    json_close_object(out);
}

void schema_exercise(struct json_writer *out)
{
    static const char *const required[] = {"seed", "level", "ingle"};
    schema_answer_definitions(out);
    schema_open_document(out, "Exercise",
                         "An invented fireplace, questions about it, and the answers worked out.");
    write_number(out, "seed", 0, 0);
    write_number(out, "level", 1, ingle_exercise_level_count());
    write_document(out);
    write_questions(out);
    schema_open_array(out, "answers", "The findings that answer the questions.");
    schema_finding(out);
    schema_close_array(out);
    schema_release(out);
    schema_close_document(out, required, COUNT(required));
    write_parts(out);
}
