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
    [LINE_OUTLINE] = "outline", [LINE_THIN] = "thin",   [LINE_HIDDEN] = "hidden",
    [LINE_CENTRE] = "centre",   [LINE_LIMIT] = "limit", [LINE_REQUIRED] = "required"};

static const char *const area_classes[AREA_COUNT] = {
    [AREA_NONE] = NULL,           [AREA_PAPER] = "paper",         [AREA_MATERIAL] = "material",
    [AREA_PRESENT] = "present",   [AREA_MISSING] = "missing",     [AREA_FORBIDDEN] = "forbidden",
    [AREA_LIMITED] = "limited"};

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
    put_points(&svg->output, "polygon", points, count, line_classes[line]);
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

int32_t svg_text_width(const char *text, int32_t height)
{
    int32_t letters = 0;
    for (; *text != '\0'; text++) {
        letters += ((unsigned char)*text & 0xC0) != 0x80;
    }
    return letters * font_size(height) * 62 / 100;
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

/* ---- dimensions ----------------------------------------------------------------------------- */

enum {
    ARROW_LENGTH = 3000,
    ARROW_HALF_WIDTH = 500,
    EXTENSION_GAP = 1000,   /* between the thing and its extension line */
    EXTENSION_PAST = 2000,  /* past the dimension line */
    TEXT_CLEARANCE = 1000   /* between the dimension line and its text */
};

/* A filled arrowhead whose point is at `tip`; (dx, dy) is the way it points, of length 1. */
static void put_arrow(struct svg *svg, struct point tip, int32_t dx, int32_t dy)
{
    struct point back = {tip.x - dx * ARROW_LENGTH, tip.y - dy * ARROW_LENGTH};
    struct point corners[] = {tip,
                              {back.x + dy * ARROW_HALF_WIDTH, back.y + dx * ARROW_HALF_WIDTH},
                              {back.x - dy * ARROW_HALF_WIDTH, back.y - dx * ARROW_HALF_WIDTH}};
    put_points(&svg->output, "polygon", corners, 3, "arrow");
}

static int32_t sign(int32_t number)
{
    return (number > 0) - (number < 0);
}

/* From the thing, a little off it, to a little past the dimension line. */
static void put_extension(struct svg *svg, struct point from, struct point to)
{
    int32_t dx = sign(to.x - from.x), dy = sign(to.y - from.y);
    if (dx == 0 && dy == 0) {
        return;
    }
    svg_line(svg, LINE_THIN,
             (struct point){from.x + dx * EXTENSION_GAP, from.y + dy * EXTENSION_GAP},
             (struct point){to.x + dx * EXTENSION_PAST, to.y + dy * EXTENSION_PAST});
}

/* How a dimension of some length on paper is laid out along its line. */
struct layout {
    int32_t way;   /* from `from` to `to`: 1 or -1 */
    int32_t past;  /* how far the line goes past both ends, where arrows point inwards */
    int32_t tail;  /* how much further it goes past `to`, below the text */
    bool inside;   /* the arrows are between the ends */
    bool fits;     /* the text is */
};

static struct layout lay_out(int32_t from, int32_t to, int32_t width)
{
    int32_t length = to > from ? to - from : from - to;
    struct layout layout = {.way = to >= from ? 1 : -1};
    layout.inside = length >= 3 * ARROW_LENGTH;
    layout.fits = length >= width + 2 * ARROW_LENGTH;
    layout.past = layout.inside ? 0 : 2 * ARROW_LENGTH;
    layout.tail = layout.fits ? 0 : width + TEXT_CLEARANCE;
    return layout;
}

void svg_dimension_level(struct svg *svg, struct point from, struct point to, int32_t at,
                         const char *text)
{
    struct point start = {from.x, at}, end = {to.x, at};
    struct layout layout = lay_out(start.x, end.x, svg_text_width(text, TEXT_SMALL));
    int32_t way = layout.way, into = layout.inside ? way : -way;
    put_extension(svg, from, start);
    put_extension(svg, to, end);
    svg_line(svg, LINE_THIN, (struct point){start.x - way * layout.past, at},
             (struct point){end.x + way * (layout.past + layout.tail), at});
    put_arrow(svg, start, -into, 0);
    put_arrow(svg, end, into, 0);
    if (layout.fits) {
        svg_text(svg, (struct point){(start.x + end.x) / 2, at - TEXT_CLEARANCE}, ANCHOR_MIDDLE,
                 TEXT_SMALL, text);
    } else {
        svg_text(svg,
                 (struct point){end.x + way * (layout.past + TEXT_CLEARANCE), at - TEXT_CLEARANCE},
                 way > 0 ? ANCHOR_START : ANCHOR_END, TEXT_SMALL, text);
    }
}

void svg_dimension_upright(struct svg *svg, struct point from, struct point to, int32_t at,
                           const char *text)
{
    struct point start = {at, from.y}, end = {at, to.y};
    struct layout layout = lay_out(start.y, end.y, svg_text_width(text, TEXT_SMALL));
    int32_t way = layout.way, into = layout.inside ? way : -way;
    put_extension(svg, from, start);
    put_extension(svg, to, end);
    svg_line(svg, LINE_THIN, (struct point){at, start.y - way * layout.past},
             (struct point){at, end.y + way * (layout.past + layout.tail)});
    put_arrow(svg, start, 0, -into);
    put_arrow(svg, end, 0, into);
    if (layout.fits) {
        svg_text_upwards(svg, (struct point){at - TEXT_CLEARANCE, (start.y + end.y) / 2},
                         ANCHOR_MIDDLE, TEXT_SMALL, text);
    } else {
        svg_text_upwards(svg,
                         (struct point){at - TEXT_CLEARANCE,
                                        end.y + way * (layout.past + TEXT_CLEARANCE)},
                         way > 0 ? ANCHOR_END : ANCHOR_START, TEXT_SMALL, text);
    }
}

void svg_leader(struct svg *svg, struct point from, struct point to, const char *text)
{
    bool right = to.x >= from.x;
    int32_t width = svg_text_width(text, TEXT_SMALL);
    svg_dot(svg, from, 600);
    svg_line(svg, LINE_THIN, from, to);
    svg_line(svg, LINE_THIN, to, (struct point){right ? to.x + width : to.x - width, to.y});
    svg_text(svg, (struct point){to.x, to.y - TEXT_CLEARANCE}, right ? ANCHOR_START : ANCHOR_END,
             TEXT_SMALL, text);
}
