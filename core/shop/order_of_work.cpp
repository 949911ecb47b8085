// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/order_of_work.h"

#include "core/shop/bore.h"
#include "core/shop/edge_marks.h"
#include "core/shop/fitting.h"
#include "core/shop/kerf_steps.h"
#include "core/shop/relief_hole.h"
#include "core/shop/rough_cut.h"
#include "core/shop/shims.h"
#include "core/shop/trimming.h"
#include "core/shop/work_reasons.h"

namespace kerfwall {

namespace {

void append(std::vector<WorkStep>& steps, const std::vector<WorkStep>& more) {
    steps.insert(steps.end(), more.begin(), more.end());
}

}  // namespace

OrderOfWork plan(const Project& project, const Solved& solved) {
    KerfSteps kerfs = kerfSteps(project, solved);
    sortThinBordersLast(kerfs.steps, project, solved);
    tellApproach(kerfs.steps, project, solved);
    OrderOfWork order;
    order.setups = kerfs.setups;
    order.lowerBound = kerfs.lowerBound;
    append(order.steps, markSteps(project, solved, kerfs.steps));
    append(order.steps, boreSteps(project, solved));
    append(order.steps, kerfs.steps);
    append(order.steps, grooveSteps(project, solved));
    append(order.steps, drillSteps(project, solved));
    append(order.steps, roughSteps(project, solved));
    append(order.steps, trimSteps(project, solved));
    append(order.steps, handSteps(project, solved));
    append(order.steps, fenceSteps(project));
    append(order.steps, holeSteps(project));
    if (!order.steps.empty()) {
        order.steps.push_back(labelStep(project, solved));
    }
    giveReasons(order.steps, project, solved);
    int number = 0;
    for (WorkStep& step : order.steps) {
        step.number = ++number;
    }
    return order;
}

}  // namespace kerfwall
