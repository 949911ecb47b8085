// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pattern_checks.h"

#include <QGridLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <algorithm>

#include "core/says/words.h"
#include "ui/session.h"

namespace kerfwall {
namespace {

QString layerWords(PatternLayer layer) {
    switch (layer) {
        case PatternLayer::Kerfs: return PatternChecks::tr("Kerfs");
        case PatternLayer::RunOut: return PatternChecks::tr("Run-out");
        case PatternLayer::Waste: return PatternChecks::tr("Waste, hatched");
        case PatternLayer::Template: return PatternChecks::tr("Opening");
        case PatternLayer::Work: return PatternChecks::tr("Cut in the work");
        case PatternLayer::Centres: return PatternChecks::tr("Centre lines");
        case PatternLayer::Holes: return PatternChecks::tr("Bores, relief holes");
        case PatternLayer::Tangents: return PatternChecks::tr("Tangent marks");
        case PatternLayer::ClampHoles: return PatternChecks::tr("Clamp holes");
        case PatternLayer::Fences: return PatternChecks::tr("Fences");
        case PatternLayer::Reference: return PatternChecks::tr("Reference edge");
        case PatternLayer::EdgeMarks: return PatternChecks::tr("Edge marks");
        case PatternLayer::Names: return PatternChecks::tr("Line names");
    }
    return {};
}

}  // namespace

PatternChecks::PatternChecks(Session& session, QWidget* parent) : QFrame(parent), m_session(session) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setVerticalSpacing(6);
    auto* heading = new QLabel(tr("Shown besides lines and edges"), this);
    heading->setObjectName(QStringLiteral("groupTitle"));
    heading->setIndent(0);
    grid->addWidget(heading, 0, 0, 1, 2);
    for (const auto& [name, layer] : kPatternLayerWords) {
        auto* box = new QCheckBox(layerWords(layer), this);
        box->setObjectName(QStringLiteral("leaveOut-") + QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())));
        const int index = static_cast<int>(m_checks.size());
        grid->addWidget(box, 1 + index / 2, index % 2);
        m_checks.push_back({layer, box});
        connect(box, &QCheckBox::toggled, this, [this, shown = layer](bool on) { take(shown, on); });
    }
    connect(&m_session, &Session::changed, this, &PatternChecks::refresh);
    refresh();
}

void PatternChecks::take(PatternLayer layer, bool shown) {
    Project next = m_session.project();
    std::erase(next.printing.leaveOut, layer);
    if (!shown) next.printing.leaveOut.push_back(layer);
    m_session.change(tr("Choose what is printed"), next);
}

void PatternChecks::refresh() {
    const auto& left = m_session.project().printing.leaveOut;
    for (const Check& check : m_checks) {
        const QSignalBlocker quiet(check.box);
        check.box->setChecked(std::ranges::find(left, check.layer) == left.end());
    }
}

}  // namespace kerfwall
