// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kept_layers.h"

#include <QCoreApplication>
#include <QSettings>

namespace kerfwall {
namespace {

QString text(const char* source) { return QCoreApplication::translate("kerfwall::KeptLayers", source); }
QString settingOf(const LayerChoice& choice) { return QStringLiteral("layers/") + choice.key; }

}  // namespace

std::vector<LayerChoice> layerChoices() {
    return {{&PlanLayers::kerfs, QStringLiteral("kerfs"), text("&Kerfs")},
            {&PlanLayers::runOut, QStringLiteral("runOut"), text("&Run-out of stopped kerfs")},
            {&PlanLayers::edgeMarks, QStringLiteral("edgeMarks"), text("&Edge marks")},
            {&PlanLayers::opening, QStringLiteral("template"), text("Opening in the &template")},
            {&PlanLayers::work, QStringLiteral("work"), text("&Opening in the work")},
            {&PlanLayers::workpiece, QStringLiteral("workpiece"), text("&Workpiece")},
            {&PlanLayers::dimensions, QStringLiteral("dimensions"), text("&Dimensions")},
            {&PlanLayers::findings, QStringLiteral("findings"), text("&Findings")}};
}

PlanLayers keptLayers() {
    PlanLayers layers;
    for (const LayerChoice& choice : layerChoices()) {
        layers.*choice.layer = QSettings().value(settingOf(choice), true).toBool();
    }
    return layers;
}

void keepLayers(const PlanLayers& layers) {
    for (const LayerChoice& choice : layerChoices()) QSettings().setValue(settingOf(choice), layers.*choice.layer);
}

}  // namespace kerfwall
