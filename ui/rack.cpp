// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/rack.h"

#include <QSettings>
#include <algorithm>

namespace kerfwall {
namespace {

const QString kRackKey = QStringLiteral("rack");

// Cut from the usual boards of 12 and 18 mm.
std::vector<StockPanel> commonSizes() { return {{400, 250, 12}, {600, 400, 12}, {500, 400, 18}, {800, 400, 18}}; }

}  // namespace

std::vector<StockPanel> rackPanels() {
    QSettings settings;
    if (!settings.contains(kRackKey + QStringLiteral("/size"))) return commonSizes();
    std::vector<StockPanel> rack;
    const int count = settings.beginReadArray(kRackKey);
    for (int i = 0; i < count; ++i) {
        settings.setArrayIndex(i);
        rack.push_back({settings.value(QStringLiteral("width")).toDouble(), settings.value(QStringLiteral("height")).toDouble(),
                        settings.value(QStringLiteral("thickness")).toDouble()});
    }
    settings.endArray();
    std::erase_if(rack, [](const StockPanel& panel) { return !isPanelSize(panel); });
    return rack;
}

void keepRack(const std::vector<StockPanel>& rack) {
    QSettings settings;
    settings.remove(kRackKey);
    settings.beginWriteArray(kRackKey, static_cast<int>(rack.size()));
    for (int i = 0; const StockPanel& panel : rack) {
        settings.setArrayIndex(i++);
        settings.setValue(QStringLiteral("width"), panel.width);
        settings.setValue(QStringLiteral("height"), panel.height);
        settings.setValue(QStringLiteral("thickness"), panel.thickness);
    }
    settings.endArray();
}

bool liesInRack(const StockPanel& panel) { return std::ranges::count(rackPanels(), panel) > 0; }

StockPanel stockPanelOf(const Project& project) {
    return {project.panel.width, project.panel.height, project.panel.thickness};
}

}  // namespace kerfwall
