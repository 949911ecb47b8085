// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/header_line.h"

#include <QHBoxLayout>
#include <QMenuBar>

#include "ui/elided_label.h"
#include "ui/session.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

// Pixels.
constexpr int kLeastTitle = 120;
constexpr int kLeastDetails = 60;

}  // namespace

HeaderLine::HeaderLine(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_title(new ElidedLabel(kLeastTitle, this)), m_details(new ElidedLabel(kLeastDetails, this)), m_menus(new QMenuBar(this)) {
    setObjectName(QStringLiteral("headerLine"));
    setAttribute(Qt::WA_StyledBackground);
    m_title->setObjectName(QStringLiteral("headerTitle"));
    m_details->setObjectName(QStringLiteral("faint"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(16, 5, 8, 5);
    row->setSpacing(12);
    row->addWidget(m_title);
    row->addWidget(m_details, 1);
    row->addWidget(m_menus);
    m_menus->setSizePolicy(QSizePolicy::Minimum, QSizePolicy::Preferred);
    m_menus->setNativeMenuBar(false);
    connect(&m_session, &Session::changed, this, &HeaderLine::refresh);
    refresh();
}

void HeaderLine::refresh() {
    const Project& project = m_session.project();
    const Units units = project.units;
    m_title->showWhole(m_session.name());
    const QString panel = tr("panel %1 × %2 × %3").arg(sizeFor(project.panel.width, units), sizeFor(project.panel.height, units),
                                                       sizeFor(project.panel.thickness, units));
    const UseAnswer& use = m_session.solved().use;
    const QString guide = project.use.byBush ? tr("bush %1, bit %2") : tr("bearing %1, bit %2");
    const QString saved = m_session.isSaved() ? (m_session.path().isEmpty() ? tr("new") : tr("saved")) : tr("not saved");
    m_details->showWhole(panel + QStringLiteral(" · ") + guide.arg(sizeFor(use.guide, units), sizeFor(use.cutter, units)) +
                       QStringLiteral(" · ") + saved);
}

}  // namespace kerfwall
