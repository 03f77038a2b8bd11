/* SPDX-License-Identifier: MIT */
/*
 * The hydraulic diameters of flues: four times the area by the perimeter.
 */
#ifndef INGLE_DRAFT_SHAPE_H
#define INGLE_DRAFT_SHAPE_H

/* Of a circle of an area: its diameter. */
double diameter_of_circle(double area);

/* Of a rectangle of an area whose sides are to each other as `first` to `second`. */
double diameter_of_rectangle(double area, double first, double second);

#endif
