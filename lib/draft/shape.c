/* SPDX-License-Identifier: MIT */
#include "draft/shape.h"

#include "draft/model.h"

#include <math.h>

double diameter_of_circle(double area)
{
    return sqrt(area / circle_shape());
}

double diameter_of_rectangle(double area, double first, double second)
{
    return 2.0 * sqrt(area * first * second) / (first + second);
}
