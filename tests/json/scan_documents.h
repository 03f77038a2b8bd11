/* SPDX-License-Identifier: MIT */
/*
 * Documents that the strict pass takes, and such as it refuses, each with the place and a part of
 * the sentence that says why. By RFC 8259, and for UTF-8 by the Unicode Standard, table 3-7.
 */
#ifndef INGLE_TESTS_SCAN_DOCUMENTS_H
#define INGLE_TESTS_SCAN_DOCUMENTS_H

#include <ingle/status.h>

#include <stddef.h>

#define DOCUMENT(literal) literal, sizeof(literal) - 1

static const struct {
    const char *bytes;
    size_t length;
    size_t nodes;
} accepted[] = {
    /* scalars alone, RFC 8259 section 2 */
    {DOCUMENT("0"), 1},
    {DOCUMENT("\"\""), 1},
    {DOCUMENT("true"), 1},
    {DOCUMENT("false"), 1},
    {DOCUMENT("null"), 1},
    {DOCUMENT("{}"), 1},
    {DOCUMENT("[]"), 1},
    /* numbers, section 6 */
    {DOCUMENT("-0"), 1},
    {DOCUMENT("-1"), 1},
    {DOCUMENT("10"), 1},
    {DOCUMENT("0.0"), 1},
    {DOCUMENT("-0.00"), 1},
    {DOCUMENT("36.5"), 1},
    {DOCUMENT("0e0"), 1},
    {DOCUMENT("0E-0"), 1},
    {DOCUMENT("1E+2"), 1},
    {DOCUMENT("1e01"), 1},
    {DOCUMENT("1.5e-007"), 1},
    {DOCUMENT("1e999"), 1},
    {DOCUMENT("123456789012345678901234567890.123456789012345678901234567890"), 1},
    {DOCUMENT("[0,-0,1]"), 4},
    /* whitespace, section 2 */
    {DOCUMENT(" \t\r\n1 \t\r\n"), 1},
    {DOCUMENT("[ ]"), 1},
    {DOCUMENT("{\n}"), 1},
    {DOCUMENT("\r[\r1\r,\t2\n]"), 3},
    {DOCUMENT("{ \"a\" : 1 , \"b\" : 2 }"), 3},
    /* strings, section 7 */
    {DOCUMENT("\"\\\" \\\\ \\/ \\b \\f \\n \\r \\t\""), 1},
    {DOCUMENT("\"\\u0061\\u00e9\\u20AC\\uFfFf\""), 1},
    {DOCUMENT("\"\\ud83d\\ude00\""), 1},
    {DOCUMENT("\"\\uD800\\uDC00\\uDBFF\\uDFFF\""), 1},
    {DOCUMENT("\"\\ud7ff\\ue000\""), 1},
    {DOCUMENT("\"\\u0000\""), 1},
    {DOCUMENT("\"\\u001f\\u007f\""), 1},
    {DOCUMENT("\"\\\\u12\""), 1},
    {DOCUMENT("\"\x7F\""), 1},
    {DOCUMENT("\"/*no comment*/ // # '\""), 1},
    {DOCUMENT("\"\xC2\x80 \xDF\xBF \xE0\xA0\x80 \xEF\xBF\xBD\""), 1},
    {DOCUMENT("\"\xED\x9F\xBF \xEE\x80\x80\""), 1},
    {DOCUMENT("\"\xF0\x90\x80\x80 \xF4\x8F\xBF\xBF\""), 1},
    {DOCUMENT("\"\xEF\xBF\xBE \xEF\xBF\xBF \xEF\xB7\x90 \xF4\x8F\xBF\xBE\""), 1},
    {DOCUMENT("\"\xEF\xBB\xBF\""), 1},
    {DOCUMENT("\"\xE2\x80\xA8\xE2\x80\xA9\xC2\xA0\""), 1},
    /* names, section 4 */
    {DOCUMENT("{\"\":0}"), 2},
    {DOCUMENT("{\"\":{\"\":0}}"), 3},
    {DOCUMENT("{\"a\":1,\"A\":2,\"aa\":3,\" a\":4}"), 5},
    {DOCUMENT("{\"a\":{\"a\":1},\"b\":{\"a\":1}}"), 5},
    {DOCUMENT("[{\"a\":1},{\"a\":1}]"), 5},
    {DOCUMENT("{\"\\u0061\":1,\"\\\\u0061\":2}"), 3},
    {DOCUMENT("{\"\\u0061\":1,\"\\u0062\":2}"), 3},
    {DOCUMENT("{\"a name that is longer than all before it, with an escape: \\u0061\":1}"), 2},
    {DOCUMENT("{\"\xC3\xA9\":1,\"e\xCC\x81\":2}"), 3}, /* é in both normal forms: two names */
    {DOCUMENT("{\"\\ud83d\\ude00\":\"\\ud83d\\ude00\"}"), 2},
    /* depth at its limit: 16 open at once */
    {DOCUMENT("[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]"), 16},
    {DOCUMENT("[[[[[[[[[[[[[[[[1],2]]]]]]]]]]]]]]]"), 18},
    {DOCUMENT("[[[[[[[[[[[[[[[{\"a\":1},[]]]]]]]]]]]]]]]]"), 18},
};

#define JSON INGLE_ERROR_JSON
#define ENCODING INGLE_ERROR_ENCODING
#define TWICE INGLE_ERROR_DUPLICATE_NAME
#define DEPTH INGLE_ERROR_DEPTH

static const struct {
    const char *bytes;
    size_t length;
    ingle_status status;
    size_t line, column;
    const char *pointer;
    const char *part; /* of the sentence */
} refused[] = {
    /* nothing, and too much */
    {DOCUMENT(""), JSON, 1, 1, "", "A value was expected, but the document ends here."},
    {DOCUMENT(" "), JSON, 1, 2, "", "A value was expected, but the document ends"},
    {DOCUMENT(" \r\n\t"), JSON, 2, 2, "", "document ends"},
    {DOCUMENT("1 2"), JSON, 1, 3, "", "The end of the document was expected, not '2'."},
    {DOCUMENT("{}{}"), JSON, 1, 3, "", "end of the document was expected, not '{'"},
    {DOCUMENT("{}\n{}"), JSON, 2, 1, "", "end of the document"},
    {DOCUMENT("[],"), JSON, 1, 3, "", "end of the document was expected, not ','"},
    {DOCUMENT("[]]"), JSON, 1, 3, "", "end of the document was expected, not ']'"},
    {DOCUMENT("\"a\"b"), JSON, 1, 4, "", "end of the document was expected, not 'b'"},
    {DOCUMENT("1\x0C"), JSON, 1, 2, "", "end of the document was expected, not U+000C"},
    {DOCUMENT("1\0"), ENCODING, 1, 2, "", "NUL"},
    {DOCUMENT("1\xFF"), ENCODING, 1, 2, "", "not UTF-8"},
    /* what is no value */
    {DOCUMENT("NaN"), JSON, 1, 1, "", "A value was expected, not 'N'."},
    {DOCUMENT("-NaN"), JSON, 1, 2, "", "A digit was expected, not 'N'."},
    {DOCUMENT("nan"), JSON, 1, 1, "", "true, false and null"},
    {DOCUMENT("Infinity"), JSON, 1, 1, "", "not 'I'"},
    {DOCUMENT("-Infinity"), JSON, 1, 2, "", "A digit was expected, not 'I'."},
    {DOCUMENT("True"), JSON, 1, 1, "", "not 'T'"},
    {DOCUMENT("tru"), JSON, 1, 1, "", "true, false and null"},
    {DOCUMENT("[nul]"), JSON, 1, 2, "/0", "true, false and null"},
    {DOCUMENT("falsE"), JSON, 1, 1, "", "true, false and null"},
    {DOCUMENT("truex"), JSON, 1, 5, "", "not 'x'"},
    {DOCUMENT("undefined"), JSON, 1, 1, "", "not 'u'"},
    {DOCUMENT("'a'"), JSON, 1, 1, "", "not '''"},
    {DOCUMENT("`a`"), JSON, 1, 1, "", "not '`'"},
    {DOCUMENT("<a>"), JSON, 1, 1, "", "not '<'"},
    {DOCUMENT("\\u0031"), JSON, 1, 1, "", "not '\\'"},
    /* numbers */
    {DOCUMENT("0x1F"), JSON, 1, 2, "", "not 'x'"},
    {DOCUMENT("+1"), JSON, 1, 1, "", "A value was expected, not '+'."},
    {DOCUMENT(".5"), JSON, 1, 1, "", "A value was expected, not '.'."},
    {DOCUMENT("-.5"), JSON, 1, 2, "", "A digit was expected, not '.'."},
    {DOCUMENT("1."), JSON, 1, 3, "", "A digit after the decimal point was expected, but"},
    {DOCUMENT("[1.]"), JSON, 1, 4, "/0", "after the decimal point was expected, not ']'"},
    {DOCUMENT("1.e1"), JSON, 1, 3, "", "after the decimal point was expected, not 'e'"},
    {DOCUMENT("1.2.3"), JSON, 1, 4, "", "end of the document"},
    {DOCUMENT("01"), JSON, 1, 2, "", "leading zero"},
    {DOCUMENT("-07.5"), JSON, 1, 3, "", "leading zero"},
    {DOCUMENT("00"), JSON, 1, 2, "", "leading zero"},
    {DOCUMENT("-"), JSON, 1, 2, "", "A digit was expected, but the document ends here."},
    {DOCUMENT("--1"), JSON, 1, 2, "", "A digit was expected, not '-'."},
    {DOCUMENT("- 1"), JSON, 1, 2, "", "A digit was expected, not U+0020."},
    {DOCUMENT("1e"), JSON, 1, 3, "", "A digit of the exponent was expected, but"},
    {DOCUMENT("1e+"), JSON, 1, 4, "", "digit of the exponent"},
    {DOCUMENT("1e+-2"), JSON, 1, 4, "", "digit of the exponent was expected, not '-'"},
    {DOCUMENT("1e1.5"), JSON, 1, 4, "", "end of the document was expected, not '.'"},
    {DOCUMENT("1,5"), JSON, 1, 2, "", "end of the document was expected, not ','"},
    {DOCUMENT("1_000"), JSON, 1, 2, "", "not '_'"},
    {DOCUMENT("1f"), JSON, 1, 2, "", "not 'f'"},
    {DOCUMENT("\xD9\xA1"), JSON, 1, 1, "", "A value was expected, not U+0661."},
    /* arrays */
    {DOCUMENT("[1,]"), JSON, 1, 4, "/1", "A value was expected, not ']'."},
    {DOCUMENT("[,1]"), JSON, 1, 2, "/0", "A value or ] was expected, not ','."},
    {DOCUMENT("[,]"), JSON, 1, 2, "/0", "not ','"},
    {DOCUMENT("[1,,2]"), JSON, 1, 4, "/1", "A value was expected, not ','."},
    {DOCUMENT("[1 2]"), JSON, 1, 4, "", "A comma or ] was expected, not '2'."},
    {DOCUMENT("[1;2]"), JSON, 1, 3, "", "A comma or ] was expected, not ';'."},
    {DOCUMENT("[1:2]"), JSON, 1, 3, "", "A comma or ] was expected, not ':'."},
    {DOCUMENT("[1}"), JSON, 1, 3, "", "A comma or ] was expected, not '}'."},
    {DOCUMENT("["), JSON, 1, 2, "/0", "A value or ] was expected, but the document ends"},
    {DOCUMENT("[1"), JSON, 1, 3, "", "A comma or ] was expected, but the document ends"},
    {DOCUMENT("[1,"), JSON, 1, 4, "/1", "A value was expected, but the document ends"},
    {DOCUMENT("[[1]"), JSON, 1, 5, "", "A comma or ]"},
    {DOCUMENT("]"), JSON, 1, 1, "", "A value was expected, not ']'."},
    /* objects */
    {DOCUMENT("{"), JSON, 1, 2, "", "in double quotes, or }, was expected, but"},
    {DOCUMENT("{]"), JSON, 1, 2, "", "in double quotes, or }, was expected, not ']'"},
    {DOCUMENT("{\"a\":1,}"), JSON, 1, 8, "", "in double quotes was expected, not '}'"},
    {DOCUMENT("{,\"a\":1}"), JSON, 1, 2, "", "in double quotes, or }, was expected, not ','"},
    {DOCUMENT("{\"a\":1,,}"), JSON, 1, 8, "", "in double quotes was expected, not ','"},
    {DOCUMENT("{'a':1}"), JSON, 1, 2, "", "in double quotes, or }, was expected, not '''"},
    {DOCUMENT("{a:1}"), JSON, 1, 2, "", "in double quotes, or }, was expected, not 'a'"},
    {DOCUMENT("{1:1}"), JSON, 1, 2, "", "in double quotes, or }, was expected, not '1'"},
    {DOCUMENT("{null:1}"), JSON, 1, 2, "", "in double quotes, or }, was expected, not 'n'"},
    {DOCUMENT("{\"a\"}"), JSON, 1, 5, "", "A colon was expected, not '}'."},
    {DOCUMENT("{\"a\" 1}"), JSON, 1, 6, "", "A colon was expected, not '1'."},
    {DOCUMENT("{\"a\",1}"), JSON, 1, 5, "", "A colon was expected, not ','."},
    {DOCUMENT("{\"a\"=1}"), JSON, 1, 5, "", "A colon was expected, not '='."},
    {DOCUMENT("{\"a\"::1}"), JSON, 1, 6, "/a", "A value was expected, not ':'."},
    {DOCUMENT("{\"a\":}"), JSON, 1, 6, "/a", "A value was expected, not '}'."},
    {DOCUMENT("{:1}"), JSON, 1, 2, "", "in double quotes, or }, was expected, not ':'"},
    {DOCUMENT("{\"a\":1 \"b\":2}"), JSON, 1, 8, "", "A comma or } was expected, not '\"'."},
    {DOCUMENT("{\"a\":1]"), JSON, 1, 7, "", "A comma or } was expected, not ']'."},
    {DOCUMENT("{\"a\":[1}"), JSON, 1, 8, "/a", "A comma or ] was expected, not '}'."},
    {DOCUMENT("{\"a\":{\"b\":tru}}"), JSON, 1, 11, "/a/b", "true, false and null"},
    {DOCUMENT("{\"a\":1"), JSON, 1, 7, "", "A comma or } was expected, but the document ends"},
    {DOCUMENT("{\"a\":"), JSON, 1, 6, "/a", "A value was expected, but the document ends"},
    {DOCUMENT("{\"a\""), JSON, 1, 5, "", "A colon was expected, but the document ends here."},
    {DOCUMENT("}"), JSON, 1, 1, "", "A value was expected, not '}'."},
    /* comments and strange whitespace */
    {DOCUMENT("/* a */ 1"), JSON, 1, 1, "", "not '/'"},
    {DOCUMENT("// a\n1"), JSON, 1, 1, "", "not '/'"},
    {DOCUMENT("# a\n1"), JSON, 1, 1, "", "not '#'"},
    {DOCUMENT("[1,\n2 // two\n]"), JSON, 2, 3, "", "A comma or ] was expected, not '/'."},
    {DOCUMENT("\x0C" "1"), JSON, 1, 1, "", "not U+000C"},
    {DOCUMENT("[\x0B]"), JSON, 1, 2, "/0", "not U+000B"},
    {DOCUMENT("\xC2\xA0" "1"), JSON, 1, 1, "", "A value was expected, not U+00A0."},
    {DOCUMENT("[1\xE2\x80\xA8]"), JSON, 1, 3, "", "A comma or ] was expected, not U+2028."},
    {DOCUMENT("\x7F"), JSON, 1, 1, "", "not U+007F"},
    /* byte-order marks and other encodings */
    {DOCUMENT("\xEF\xBB\xBF{}"), JSON, 1, 1, "", "not the byte-order mark U+FEFF"},
    {DOCUMENT("\xEF\xBB"), ENCODING, 1, 1, "", "not UTF-8"},
    {DOCUMENT("\xFF\xFE{\0}\0"), ENCODING, 1, 1, "", "not UTF-8"},
    {DOCUMENT("\0{\0}"), ENCODING, 1, 1, "", "NUL"},
    {DOCUMENT("{\0}\0"), ENCODING, 1, 2, "", "NUL"},
    {DOCUMENT("\0"), ENCODING, 1, 1, "", "NUL"},
    {DOCUMENT("[1\0]"), ENCODING, 1, 3, "", "NUL"},
    {DOCUMENT("\"a\0b\""), ENCODING, 1, 3, "", "NUL"},
    {DOCUMENT("\"\xE9\""), ENCODING, 1, 2, "", "not UTF-8"},
    /* strings */
    {DOCUMENT("\""), JSON, 1, 2, "", "A closing quote was expected, but"},
    {DOCUMENT("\"abc"), JSON, 1, 5, "", "A closing quote was expected, but"},
    {DOCUMENT("[\"a]"), JSON, 1, 5, "/0", "A closing quote"},
    {DOCUMENT("\"a'"), JSON, 1, 4, "", "A closing quote"},
    {DOCUMENT("\"a\nb\""), JSON, 1, 3, "", "raw control character was expected, not U+000A"},
    {DOCUMENT("\"a\tb\""), JSON, 1, 3, "", "not U+0009"},
    {DOCUMENT("\"a\rb\""), JSON, 1, 3, "", "not U+000D"},
    {DOCUMENT("{\"a\nb\":1}"), JSON, 1, 4, "", "not U+000A"},
    {DOCUMENT("\"\x01\""), JSON, 1, 2, "", "not U+0001"},
    {DOCUMENT("\"\x1F\""), JSON, 1, 2, "", "not U+001F"},
    /* escapes */
    {DOCUMENT("\"\\"), JSON, 1, 3, "", "The rest of an escape was expected, but"},
    {DOCUMENT("\"\\\""), JSON, 1, 4, "", "A closing quote"},
    {DOCUMENT("\"a\\x41\""), JSON, 1, 3, "", "After a backslash, one of"},
    {DOCUMENT("\"\\a\""), JSON, 1, 2, "", "After a backslash"},
    {DOCUMENT("\"\\'\""), JSON, 1, 2, "", "After a backslash"},
    {DOCUMENT("\"\\0\""), JSON, 1, 2, "", "After a backslash"},
    {DOCUMENT("\"\\N\""), JSON, 1, 2, "", "After a backslash"},
    {DOCUMENT("\"\\\n\""), JSON, 1, 2, "", "After a backslash"},
    {DOCUMENT("\"\\\0\""), JSON, 1, 2, "", "After a backslash"},
    {DOCUMENT("\"\\\xC3\xA9\""), JSON, 1, 2, "", "After a backslash"},
    {DOCUMENT("\"\\U0041\""), JSON, 1, 2, "", "After a backslash"},
    {DOCUMENT("\"\\u\""), JSON, 1, 2, "", "Four hexadecimal digits"},
    {DOCUMENT("\"\\u004\""), JSON, 1, 2, "", "Four hexadecimal digits"},
    {DOCUMENT("\"\\u004"), JSON, 1, 2, "", "Four hexadecimal digits"},
    {DOCUMENT("\"\\u00g0\""), JSON, 1, 2, "", "Four hexadecimal digits"},
    {DOCUMENT("\"\\u+041\""), JSON, 1, 2, "", "Four hexadecimal digits"},
    {DOCUMENT("\"\\u 041\""), JSON, 1, 2, "", "Four hexadecimal digits"},
    {DOCUMENT("\"\\u00@0\""), JSON, 1, 2, "", "Four hexadecimal digits"},
    {DOCUMENT("\"\\u{41}\""), JSON, 1, 2, "", "Four hexadecimal digits"},
    {DOCUMENT("{\"\\u00\":1}"), JSON, 1, 3, "", "Four hexadecimal digits"},
    {DOCUMENT("\"\\ud800\""), ENCODING, 1, 2, "", "Half a surrogate pair"},
    {DOCUMENT("\"ab\\udc00\""), ENCODING, 1, 4, "", "Half a surrogate pair"},
    {DOCUMENT("\"\\udbff\\ud800\""), ENCODING, 1, 2, "", "Half a surrogate pair"},
    {DOCUMENT("\"\\udc00\\udc00\""), ENCODING, 1, 2, "", "Half a surrogate pair"},
    {DOCUMENT("\"\\ud83d\\u0041\""), ENCODING, 1, 2, "", "Half a surrogate pair"},
    {DOCUMENT("\"\\ud83d\\n\""), ENCODING, 1, 2, "", "Half a surrogate pair"},
    {DOCUMENT("\"\\ud83dude00\""), ENCODING, 1, 2, "", "Half a surrogate pair"},
    {DOCUMENT("\"\\ude00\\ud83d\""), ENCODING, 1, 2, "", "Half a surrogate pair"},
    {DOCUMENT("\"\\ud83d\\ude0"), ENCODING, 1, 2, "", "Half a surrogate pair"},
    {DOCUMENT("\"\\ud83d\\ude00\\ude00\""), ENCODING, 1, 14, "", "Half a surrogate pair"},
    {DOCUMENT("{\"\\ud800\":1}"), ENCODING, 1, 3, "", "Half a surrogate pair"},
    {DOCUMENT("{\"a\":{\"a\\u0000b\":1}}"), ENCODING, 1, 7, "/a", "cannot hold \\u0000"},
    /* UTF-8 */
    {DOCUMENT("\"\xC0\x80\""), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\xC1\xBF\""), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\xE0\x80\x80\""), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\xE0\x9F\xBF\""), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\xF0\x80\x80\x80\""), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\xF0\x8F\xBF\xBF\""), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\xED\xA0\x80\""), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\xED\xBF\xBF\""), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\xED\xA0\xBD\xED\xB8\x80\""), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\xF4\x90\x80\x80\""), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\xF5\x80\x80\x80\""), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\xF8\x88\x80\x80\x80\""), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\xFE\""), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\x80\""), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"a\xBF\""), ENCODING, 1, 3, "", "not UTF-8"},
    {DOCUMENT("\"\xC3\xA9\xA9\""), ENCODING, 1, 3, "", "not UTF-8"},
    {DOCUMENT("\"\xC3\""), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\xC3"), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\xE2\x82\""), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\xE2\x82"), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\xE2\"\x82\""), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\xF0\x9F\x98\""), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\xF0\x9F\x98"), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("\"\xF0\x9F\""), ENCODING, 1, 2, "", "not UTF-8"},
    {DOCUMENT("{\"\xC0\xAF\":1}"), ENCODING, 1, 3, "", "not UTF-8"},
    {DOCUMENT("[\x80]"), ENCODING, 1, 2, "/0", "not UTF-8"},
    /* names that come twice */
    {DOCUMENT("{\"a\":1,\"a\":2}"), TWICE, 1, 8, "/a", "of this name already"},
    {DOCUMENT("{\"\":1,\"\":2}"), TWICE, 1, 7, "/", "of this name already"},
    {DOCUMENT("{\"a\":1,\n\"\\u0061\":2}"), TWICE, 2, 1, "/a", "of this name already"},
    {DOCUMENT("{\"\\u0061\":1,\"a\":2}"), TWICE, 1, 13, "/a", "of this name already"},
    {DOCUMENT("{\"\\/\":1,\"/\":2}"), TWICE, 1, 9, "/~1", "of this name already"},
    {DOCUMENT("{\"\\n\":1,\"\\u000A\":2}"), TWICE, 1, 9, "/\n", "of this name already"},
    {DOCUMENT("{\"\xC3\xA9\":1,\"\\u00e9\":2}"), TWICE, 1, 8, "/\xC3\xA9", "of this name"},
    {DOCUMENT("{\"\\ud83d\\ude00\":1,\"\xF0\x9F\x98\x80\":2}"), TWICE, 1, 19,
     "/\xF0\x9F\x98\x80", "of this name"},
    {DOCUMENT("[{\"a\":1},{\"b\":{\"c\":1,\"c\":2}}]"), TWICE, 1, 22, "/1/b/c", "of this name"},
    {DOCUMENT("{\"a\":{\"b\":1},\"c\":[],\"a\":2}"), TWICE, 1, 21, "/a", "of this name"},
    {DOCUMENT("{\"b\":1,\"a\":1,\"a\":2,\"b\":2}"), TWICE, 1, 14, "/a", "of this name"},
    /* depth */
    {DOCUMENT("[[[[[[[[[[[[[[[[["), DEPTH, 1, 17, "/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0", "16 deep"},
    {DOCUMENT("[[[[[[[[[[[[[[[[{}]]]]]]]]]]]]]]]]"), DEPTH, 1, 17,
     "/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0", "16 deep"},
    /* places behind letters of several bytes */
    {DOCUMENT("{\"\xC3\xA9\": [\"\xF0\x9F\x98\x80\", x]}"), JSON, 1, 13, "/\xC3\xA9/1", "not 'x'"},
    {DOCUMENT("{\r\n  \"a/b~c\": [\r\n    1.\r\n  ]\r\n}"), JSON, 3, 7, "/a~1b~0c/0",
     "A digit after the decimal point was expected, not U+000D."},
};

#undef JSON
#undef ENCODING
#undef TWICE
#undef DEPTH

#endif
