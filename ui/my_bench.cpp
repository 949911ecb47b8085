// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/my_bench.h"

#include <QSettings>
#include <QString>

#include "core/says/project_text.h"

namespace kerfwall {
namespace {

const QString kKey = QStringLiteral("bench");

}  // namespace

std::optional<Bench> myBench() {
    const std::string text = QSettings().value(kKey).toString().toStdString();
    const auto kept = text.empty() ? std::expected<Project, Refusal>(std::unexpected(Refusal{})) : readProject(text);
    return kept ? kept->bench : std::nullopt;
}

void keepAsMyBench(const Bench& bench) {
    // A project file asks for a panel; any will do.
    Project around;
    around.panel.width = around.panel.height = 100;
    around.panel.thickness = 12;
    around.bench.emplace(bench);
    QSettings().setValue(kKey, QString::fromStdString(writeProject(around)));
}

}  // namespace kerfwall
