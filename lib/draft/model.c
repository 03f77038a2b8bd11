/* SPDX-License-Identifier: MIT */
#include "draft/model.h"

#include "draft/numbers.h"

#include <math.h>

double inlet_loss_of(double flue_area, double throat_area, bool rounded)
{
    double share = flue_area / throat_area;
    double widening = 1.0 - 1.0 / number_of(NUMBER_SMOKE_CHAMBER_RATIO);
    double entry = number_of(rounded ? NUMBER_ROUNDED_ENTRY : NUMBER_SHARP_ENTRY);
    return share * share * (entry + widening * widening) + number_of(NUMBER_GATHER_LOSS);
}

static double inlet_loss(const ingle_draft_input *input)
{
    return input->inlet == INGLE_DRAFT_INLET_GIVEN
               ? input->inlet_loss
               : inlet_loss_of(input->flue_area, input->throat_area,
                               input->inlet == INGLE_DRAFT_INLET_ROUNDED);
}

static double density(double pressure, double temperature)
{
    return pressure / (number_of(NUMBER_GAS_CONSTANT) * temperature);
}

/* What the temperatures give: densities, and what they drive. */
static void run_column(const ingle_draft_input *input, struct flow *flow)
{
    double share;
    flow->mean_temperature = input->outdoor_temperature + input->rise;
    share = input->outdoor_temperature / flow->mean_temperature;
    flow->theta = share * (1.0 - share);
    flow->outdoor_density = density(input->air_pressure, input->outdoor_temperature);
    flow->gas_density = density(input->air_pressure, flow->mean_temperature);
    flow->room_density = density(input->air_pressure, input->room_temperature);
    flow->theoretical_draft = number_of(NUMBER_GRAVITY) * input->height *
                              (flow->outdoor_density - flow->gas_density);
    flow->driving_pressure = flow->theoretical_draft + input->room_pressure;
}

static void run_losses(const ingle_draft_input *input, struct flow *flow)
{
    flow->inlet_loss = inlet_loss(input);
    flow->friction_loss = input->friction_factor * input->height / input->hydraulic_diameter;
    flow->total_loss = flow->inlet_loss + input->fitting_loss + flow->friction_loss +
                       input->cap_loss + number_of(NUMBER_EXIT_LOSS);
}

void flow_run(const ingle_draft_input *input, struct flow *flow)
{
    *flow = (struct flow){0};
    run_column(input, flow);
    run_losses(input, flow);
    flow->area_ratio = input->flue_area / input->opening_area;
    flow->flows = flow->driving_pressure > 0.0 && flow->total_loss > 0.0;
    if (flow->flows) {
        flow->flue_velocity =
            sqrt(2.0 * flow->driving_pressure / (flow->total_loss * flow->gas_density));
        flow->mass_flow = flow->gas_density * flow->flue_velocity * input->flue_area;
        flow->frontal_velocity = flow->mass_flow / (flow->room_density * input->opening_area);
    }
}
