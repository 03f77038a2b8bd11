/* SPDX-License-Identifier: MIT */
#include "drawing/svg.h"

#include <string.h>

/* ---- numbers -------------------------------------------------------------------------------- */

static void put_digits(struct output *output, uint64_t number)
{
    char digits[20];
    size_t start = sizeof digits;
    do {
        digits[--start] = (char)('0' + number % 10);
        number /= 10;
    } while (number > 0);
    output_add_bytes(output, digits + start, sizeof digits - start);
}

static void put_integer(struct output *output, int64_t number)
{
    if (number < 0) {
        output_add(output, "-");
    }
    put_digits(output, number < 0 ? 0 - (uint64_t)number : (uint64_t)number);
}

/* Thousandths of a millimetre as millimetres: 12500 is 12.5. */
static void put_length(struct output *output, int32_t length)
{
    uint32_t size = length < 0 ? 0U - (uint32_t)length : (uint32_t)length;
    uint32_t rest = size % 1000;
    output_add(output, length < 0 ? "-" : "");
    put_digits(output, size / 1000);
    if (rest > 0) {
        char digits[4] = {'.', (char)('0' + rest / 100), (char)('0' + rest / 10 % 10),
                          (char)('0' + rest % 10)};
        size_t count = rest % 10 != 0 ? 4 : rest % 100 != 0 ? 3 : 2;
        output_add_bytes(output, digits, count);
    }
}

static void put_attribute(struct output *output, const char *name, int32_t length)
{
    output_add(output, " ");
    output_add(output, name);
    output_add(output, "=\"");
    put_length(output, length);
    output_add(output, "\"");
}

static void put_point(struct output *output, struct point point)
{
    put_length(output, point.x);
    output_add(output, ",");
    put_length(output, point.y);
}

/* ---- the drawing ---------------------------------------------------------------------------- */

static const char style_sheet[] =
    "<style>"
    "text{font-family:'DejaVu Sans',Verdana,Arial,sans-serif;fill:#000}"
    ".outline,.thin,.hidden,.centre,.limit,.required{fill:none;stroke:#000}"
    ".outline{stroke-width:.5}.thin{stroke-width:.25}"
    ".hidden{stroke-width:.25;stroke-dasharray:3 1}"
    ".centre{stroke-width:.25;stroke-dasharray:6 .75 .25 .75}"
    ".limit{stroke-width:.5;stroke:#0072b2;stroke-dasharray:12 1.5 .5 1.5}"
    ".required{stroke-width:.25;stroke:#b34700;stroke-dasharray:6 .75 .25 .75 .25 .75}"
    ".arrow,.dot{fill:#000;stroke:none}"
    ".paper{fill:#fff}.material{fill:url(#material)}.present{fill:#e8e8e4}"
    ".missing{fill:url(#missing)}.forbidden{fill:url(#forbidden)}.limited{fill:url(#limited)}"
    ".part{fill:url(#part)}.wood{fill:url(#wood)}.stone{fill:url(#stone)}"
    ".failing{fill:url(#failing)}"
    "</style>\n";

/* Hatching: one line in each tile, which the tile's turn gives its direction. */
static const char patterns[] =
    "<defs>\n"
    "<pattern id=\"material\" width=\"3\" height=\"3\" patternUnits=\"userSpaceOnUse\" "
    "patternTransform=\"rotate(45)\"><path d=\"M0 0V3\" stroke=\"#000\" stroke-width=\".25\"/>"
    "</pattern>\n"
    "<pattern id=\"missing\" width=\"2\" height=\"2\" patternUnits=\"userSpaceOnUse\" "
    "patternTransform=\"rotate(45)\"><path d=\"M0 0V2M0 0H2\" stroke=\"#b34700\" "
    "stroke-width=\".35\"/></pattern>\n"
    "<pattern id=\"forbidden\" width=\"1.5\" height=\"1.5\" patternUnits=\"userSpaceOnUse\" "
    "patternTransform=\"rotate(45)\"><path d=\"M0 0V1.5\" stroke=\"#0072b2\" "
    "stroke-width=\".25\"/></pattern>\n"
    "<pattern id=\"limited\" width=\"3\" height=\"3\" patternUnits=\"userSpaceOnUse\" "
    "patternTransform=\"rotate(-45)\"><path d=\"M0 0V3\" stroke=\"#0072b2\" "
    "stroke-width=\".25\"/></pattern>\n"
    "<pattern id=\"wood\" width=\"6\" height=\"2.4\" patternUnits=\"userSpaceOnUse\">"
    "<path d=\"M0 0H6V2.4H0Z\" fill=\"#f3e3b3\"/><path d=\"M0 .6H4M3 1.8H6M0 1.8H1\" "
    "stroke=\"#000\" stroke-width=\".15\"/></pattern>\n"
    "<pattern id=\"part\" width=\"2\" height=\"2\" patternUnits=\"userSpaceOnUse\" "
    "patternTransform=\"rotate(45)\"><path d=\"M0 0H2V2H0Z\" fill=\"#d9e6ee\"/>"
    "<path d=\"M.8 .8H1.2V1.2H.8Z\"/></pattern>\n"
    "<pattern id=\"stone\" width=\"2\" height=\"2\" patternUnits=\"userSpaceOnUse\">"
    "<path d=\"M0 0H2V2H0Z\" fill=\"#fff\"/><path d=\"M1 0V2\" stroke=\"#000\" "
    "stroke-width=\".15\"/></pattern>\n"
    "<pattern id=\"failing\" width=\"1.5\" height=\"1.5\" patternUnits=\"userSpaceOnUse\">"
    "<path d=\"M0 0H1.5V1.5H0Z\" fill=\"#f3e3b3\"/><path d=\"M0 .75H1.5M.75 0V1.5\" "
    "stroke=\"#b34700\" stroke-width=\".35\"/></pattern>\n"
    "</defs>\n";

static void put_element(struct output *output, const char *name, const char *text)
{
    output_add(output, "<");
    output_add(output, name);
    output_add(output, ">");
    output_add_escaped(output, text);
    output_add(output, "</");
    output_add(output, name);
    output_add(output, ">\n");
}

ingle_status svg_start(struct svg *svg, ingle_write write, void *context, int32_t width,
                       int32_t height, const char *title, const char *description)
{
    struct output *output = &svg->output;
    svg->width = width;
    svg->height = height;
    ingle_status status = output_start(output, write, context);
    if (status != INGLE_OK) {
        return status;
    }
    output_add(output, "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"");
    put_length(output, width);
    output_add(output, "mm\" height=\"");
    put_length(output, height);
    output_add(output, "mm\" viewBox=\"0 0 ");
    put_length(output, width);
    output_add(output, " ");
    put_length(output, height);
    output_add(output, "\">\n");
    put_element(output, "title", title);
    put_element(output, "desc", description);
    output_add(output, style_sheet);
    output_add(output, patterns);
    svg_area(svg, AREA_PAPER, (struct point){0, 0}, width, height);
    return INGLE_OK;
}

ingle_status svg_end(struct svg *svg)
{
    output_add(&svg->output, "</svg>\n");
    return output_end(&svg->output);
}

static void put_word(struct output *output, const char *name, const char *word)
{
    output_add(output, " ");
    output_add(output, name);
    output_add(output, "=\"");
    output_add_escaped(output, word);
    output_add(output, "\"");
}

void svg_group(struct svg *svg, const char *name, const char *label)
{
    output_add(&svg->output, "<g");
    put_word(&svg->output, "data-name", name);
    output_add(&svg->output, ">");
    if (label != NULL) {
        put_element(&svg->output, "title", label);
    } else {
        output_add(&svg->output, "\n");
    }
}

void svg_amount_group(struct svg *svg, const char *name, const char *subject, int64_t value)
{
    struct output *output = &svg->output;
    output_add(output, "<g");
    put_word(output, "data-name", name);
    put_word(output, "data-subject", subject);
    output_add(output, " data-value=\"");
    put_integer(output, value);
    output_add(output, "\">\n");
}

void svg_group_end(struct svg *svg)
{
    output_add(&svg->output, "</g>\n");
}

/* ---- lines and areas ------------------------------------------------------------------------ */

static const char *const line_classes[LINE_COUNT] = {
    [LINE_NONE] = NULL,       [LINE_OUTLINE] = "outline", [LINE_THIN] = "thin",
    [LINE_HIDDEN] = "hidden", [LINE_CENTRE] = "centre",   [LINE_LIMIT] = "limit",
    [LINE_REQUIRED] = "required"};

static const char *const area_classes[AREA_COUNT] = {
    [AREA_NONE] = NULL,           [AREA_PAPER] = "paper",         [AREA_MATERIAL] = "material",
    [AREA_PRESENT] = "present",   [AREA_MISSING] = "missing",     [AREA_FORBIDDEN] = "forbidden",
    [AREA_LIMITED] = "limited",   [AREA_FAILING] = "failing",     [AREA_WOOD] = "wood",
    [AREA_STONE] = "stone",       [AREA_PART] = "part"};

static void put_class(struct output *output, const char *name)
{
    put_word(output, "class", name);
    output_add(output, "/>\n");
}

void svg_line(struct svg *svg, enum line line, struct point from, struct point to)
{
    struct output *output = &svg->output;
    output_add(output, "<line");
    put_attribute(output, "x1", from.x);
    put_attribute(output, "y1", from.y);
    put_attribute(output, "x2", to.x);
    put_attribute(output, "y2", to.y);
    put_class(output, line_classes[line]);
}

static void put_points(struct output *output, const char *element, const struct point *points,
                       size_t count, const char *class_name)
{
    output_add(output, "<");
    output_add(output, element);
    output_add(output, " points=\"");
    for (size_t i = 0; i < count; i++) {
        output_add(output, i > 0 ? " " : "");
        put_point(output, points[i]);
    }
    output_add(output, "\"");
    put_class(output, class_name);
}

void svg_polyline(struct svg *svg, enum line line, const struct point *points, size_t count)
{
    put_points(&svg->output, "polyline", points, count, line_classes[line]);
}

void svg_polyline_start(struct svg *svg)
{
    output_add(&svg->output, "<polyline points=\"");
}

void svg_polyline_point(struct svg *svg, struct point point)
{
    put_point(&svg->output, point);
    output_add(&svg->output, " ");
}

void svg_polyline_end(struct svg *svg, enum line line)
{
    output_add(&svg->output, "\"");
    put_class(&svg->output, line_classes[line]);
}

void svg_polygon(struct svg *svg, enum line line, enum area area, const struct point *points,
                 size_t count)
{
    if (area != AREA_NONE) {
        put_points(&svg->output, "polygon", points, count, area_classes[area]);
    }
    if (line != LINE_NONE) {
        put_points(&svg->output, "polygon", points, count, line_classes[line]);
    }
}

static void put_rectangle(struct output *output, struct point corner, int32_t width,
                          int32_t height, const char *class_name)
{
    output_add(output, "<rect");
    put_attribute(output, "x", corner.x);
    put_attribute(output, "y", corner.y);
    put_attribute(output, "width", width);
    put_attribute(output, "height", height);
    put_class(output, class_name);
}

void svg_area(struct svg *svg, enum area area, struct point corner, int32_t width, int32_t height)
{
    if (area != AREA_NONE && width > 0 && height > 0) {
        put_rectangle(&svg->output, corner, width, height, area_classes[area]);
    }
}

void svg_rectangle(struct svg *svg, enum line line, enum area area, struct point corner,
                   int32_t width, int32_t height)
{
    svg_area(svg, area, corner, width, height);
    put_rectangle(&svg->output, corner, width, height, line_classes[line]);
}

static void put_circle(struct output *output, struct point centre, int32_t radius,
                       const char *class_name)
{
    output_add(output, "<circle");
    put_attribute(output, "cx", centre.x);
    put_attribute(output, "cy", centre.y);
    put_attribute(output, "r", radius);
    put_class(output, class_name);
}

void svg_circle(struct svg *svg, enum line line, enum area area, struct point centre,
                int32_t radius)
{
    if (area != AREA_NONE) {
        put_circle(&svg->output, centre, radius, area_classes[area]);
    }
    put_circle(&svg->output, centre, radius, line_classes[line]);
}

void svg_dot(struct svg *svg, struct point centre, int32_t radius)
{
    put_circle(&svg->output, centre, radius, "dot");
}

/* ---- text ----------------------------------------------------------------------------------- */

/* A capital letter is about 0.73 of the size that a font is called by. */
static int32_t font_size(int32_t height)
{
    return height * 100 / 73;
}

/*
 * Hundredths of the size, rounded up, that the letters of DejaVu Sans are wide, from the blank on;
 * it is the widest of the fonts that the style sheet asks for.
 */
static const uint8_t letter_widths[] = {
    32, 41, 46, 84, 64, 96, 78, 28, 40, 40, 50,  84, 32, 37, 32, 34, 64, 64, 64, 64, 64, 64, 64, 64,
    64, 64, 34, 34, 84, 84, 84, 54, 100, 69, 69, 70, 78, 64, 58, 78, 76, 30, 30, 66, 56, 87, 75, 79,
    61, 79, 70, 64, 62, 74, 69, 99, 69, 62, 69,  40, 34, 40, 84, 50, 50, 62, 64, 55, 64, 62, 36, 64,
    64, 28, 28, 58, 28, 98, 64, 62, 64, 64, 42,  53, 40, 64, 60, 82, 60, 60, 53, 64, 34, 64, 84};

enum { FIRST_LETTER = ' ', LAST_LETTER = '~', FOREIGN_LETTER = 110 };

/* Letters past ASCII are taken for wide ones; the bytes that continue one add nothing. */
static int32_t letter_width(unsigned char byte)
{
    if (byte == SVG_NO_BREAK) {
        return letter_widths[0];
    }
    if (byte >= FIRST_LETTER && byte <= LAST_LETTER) {
        return letter_widths[byte - FIRST_LETTER];
    }
    return (byte & 0xC0) == 0x80 ? 0 : FOREIGN_LETTER;
}

int32_t svg_text_width(const char *text, int32_t height)
{
    int32_t hundredths = 0;
    for (; *text != '\0'; text++) {
        hundredths += letter_width((unsigned char)*text);
    }
    return hundredths * (font_size(height) / 10) / 10;
}

/* Where the last letter that begins before `end` begins. */
static size_t letter_before(const char *text, size_t end)
{
    do {
        end--;
    } while (end > 0 && ((unsigned char)text[end] & 0xC0) == 0x80);
    return end;
}

void svg_fit_text(char *text, size_t size, int32_t width, int32_t height)
{
    size_t end = strlen(text);
    while (end > 0 && svg_text_width(text, height) > width) {
        end = letter_before(text, end);
        while (end > 0 && end + sizeof "…" > size) {
            end = letter_before(text, end);
        }
        memcpy(text + end, "…", sizeof "…");
    }
}

size_t svg_line_length(const char *text, int32_t width, int32_t height)
{
    int32_t size = font_size(height) / 10, across = 0;
    size_t words = 0, letters = 0, at = 0;
    for (; text[at] != '\0' && across * size / 10 <= width; at++) {
        words = text[at] == ' ' ? at : words;
        letters = ((unsigned char)text[at] & 0xC0) == 0x80 ? letters : at;
        across += letter_width((unsigned char)text[at]);
    }
    if (across * size / 10 <= width) {
        return at;
    }
    return words > 0 ? words : letters > 0 ? letters : at;
}

static void put_text(struct svg *svg, struct point at, enum anchor anchor, int32_t height,
                     bool upwards, const char *text)
{
    static const char *const anchors[] = {"start", "middle", "end"};
    struct output *output = &svg->output;
    output_add(output, "<text");
    put_attribute(output, "x", at.x);
    put_attribute(output, "y", at.y);
    put_attribute(output, "font-size", font_size(height));
    put_word(output, "text-anchor", anchors[anchor]);
    if (upwards) {
        output_add(output, " transform=\"rotate(-90 ");
        put_length(output, at.x);
        output_add(output, " ");
        put_length(output, at.y);
        output_add(output, ")\"");
    }
    output_add(output, ">");
    output_add_escaped(output, text);
    output_add(output, "</text>\n");
}

void svg_text(struct svg *svg, struct point at, enum anchor anchor, int32_t height,
              const char *text)
{
    put_text(svg, at, anchor, height, false, text);
}

void svg_text_upwards(struct svg *svg, struct point at, enum anchor anchor, int32_t height,
                      const char *text)
{
    put_text(svg, at, anchor, height, true, text);
}

void svg_text_over(struct svg *svg, struct point middle, bool upwards, const char *text)
{
    int32_t half = svg_text_width(text, TEXT_SMALL) / 2;
    int32_t across = TEXT_SMALL + 400;
    if (upwards) {
        svg_area(svg, AREA_PAPER, (struct point){middle.x - across + 200, middle.y - half}, across,
                 2 * half);
    } else {
        svg_area(svg, AREA_PAPER, (struct point){middle.x - half, middle.y - across + 200},
                 2 * half, across);
    }
    put_text(svg, middle, ANCHOR_MIDDLE, TEXT_SMALL, upwards, text);
}

/* ---- arrows --------------------------------------------------------------------------------- */

enum { ARROW_HALF_WIDTH = 500 };

void svg_arrow(struct svg *svg, struct point tip, int32_t dx, int32_t dy)
{
    struct point back = {tip.x - dx * ARROW_LENGTH, tip.y - dy * ARROW_LENGTH};
    struct point corners[] = {tip,
                              {back.x + dy * ARROW_HALF_WIDTH, back.y + dx * ARROW_HALF_WIDTH},
                              {back.x - dy * ARROW_HALF_WIDTH, back.y - dx * ARROW_HALF_WIDTH}};
    put_points(&svg->output, "polygon", corners, 3, "arrow");
}
