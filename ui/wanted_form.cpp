// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wanted_form.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <algorithm>

#include "core/geometry/moving.h"
#include "ui/length_field.h"
#include "ui/session.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr double kMostWanted = 3000;  // mm: no panel is larger
constexpr int kFieldWidth = 150;

QString sizeText(const Blank& blank, Units units) {
    return WantedForm::tr("%1 × %2").arg(lengthUnitFor(blank.width, units), lengthUnitFor(blank.height, units));
}

QString steeringText(const Steering& steering, Units units) {
    const QString text = steering.byBush ? WantedForm::tr("Take the bush of %1 and the bit of %2")
                                         : WantedForm::tr("Take the bearing of %1 and the bit of %2");
    return text.arg(lengthUnitFor(steering.guide, units), lengthUnitFor(steering.cutter, units));
}

QLabel* wrapped(const QString& name, QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setObjectName(name);
    label->setWordWrap(true);
    label->hide();
    return label;
}

}  // namespace

WantedForm::WantedForm(Session& session, QWidget* parent)
    : QFrame(parent), m_session(session), m_grid(new QGridLayout(this)) {
    m_grid->setContentsMargins(0, 0, 0, 18);
    m_grid->setVerticalSpacing(6);
    m_grid->setColumnStretch(0, 1);
    auto* heading = new QLabel(tr("Wanted in the work"), this);
    heading->setObjectName(QStringLiteral("sectionTitle"));
    auto* leave = new QPushButton(tr("Put aside"), this);
    leave->setObjectName(QStringLiteral("wantedLeave"));
    m_grid->addWidget(heading, 0, 0);
    m_grid->addWidget(leave, 0, 1);
    addRow(tr("Width"), QStringLiteral("wantedWidth"), WishPart::Width, {});
    addRow(tr("Height"), QStringLiteral("wantedHeight"), WishPart::Height, {});
    addRow(tr("Corner radius"), QStringLiteral("wantedCorner"), WishPart::Corner, tr("what the bit leaves"));
    addRow(tr("Middle from the left edge"), QStringLiteral("wantedAcross"), WishPart::Across, tr("in the middle"));
    addRow(tr("Middle from the bottom edge"), QStringLiteral("wantedUp"), WishPart::Up, tr("in the middle"));
    addFoot();
    connect(leave, &QPushButton::clicked, this, &WantedForm::closeAsked);
    connect(&m_session, &Session::changed, this, &WantedForm::refresh);
    hide();
}

void WantedForm::addRow(const QString& label, const QString& name, WishPart part, const QString& emptyMeans) {
    auto* field = new LengthField(this);
    field->setObjectName(name);
    field->setAccessibleName(label);
    field->setFixedWidth(kFieldWidth);
    field->setMayBeEmpty(true);
    field->setPlaceholderText(emptyMeans);
    field->setRange(0, kMostWanted, tr("This must be 0 to 3000 mm."));
    auto* text = new QLabel(label, this);
    text->setBuddy(field);
    auto* trouble = wrapped(name + QStringLiteral("Trouble"), this);
    trouble->setProperty("trouble", true);
    const int at = m_grid->rowCount();
    m_grid->addWidget(text, at, 0);
    m_grid->addWidget(field, at, 1);
    m_grid->addWidget(trouble, at + 1, 0, 1, 2);
    m_rows.push_back({part, field, trouble, std::nullopt, false});
    connect(field, &LengthField::typed, this, [this, part](std::optional<double> value) {
        row(part).typed = value;
        row(part).isUnreadable = false;
        refresh();
    });
    connect(field, &LengthField::troubled, this, [this, part](const QString& sentence) {
        // What cannot be read leaves the field as it was before, and so the wish.
        row(part).typed = row(part).field->value();
        row(part).isUnreadable = !sentence.isEmpty();
        refresh();
    });
    connect(field, &LengthField::entered, this, [this, part](std::optional<double> value) {
        row(part).typed = value;
        refresh();
    });
    connect(field, &QLineEdit::returnPressed, this, [this] {
        if (m_lay->isEnabled()) m_lay->click();
    });
    connect(field, &LengthField::left, this, &WantedForm::closeAsked);
}

void WantedForm::addFoot() {
    m_answer = wrapped(QStringLiteral("wantedAnswer"), this);
    m_other = new QPushButton(this);
    m_other->setObjectName(QStringLiteral("wantedOther"));
    m_other->hide();
    m_lay = new QPushButton(tr("Lay its lines"), this);
    m_lay->setObjectName(QStringLiteral("wantedLay"));
    const int at = m_grid->rowCount();
    m_grid->addWidget(m_answer, at, 0, 1, 2);
    m_grid->addWidget(m_other, at + 1, 0, 1, 2);
    m_grid->addWidget(m_lay, at + 2, 1);
    connect(m_lay, &QPushButton::clicked, this, [this] { lay(m_session.project(), tr("Lay a window of the size wanted")); });
    connect(m_other, &QPushButton::clicked, this, [this] {
        if (m_offered) lay(steeredBy(m_session.project(), *m_offered), tr("Lay a window with other tools"));
    });
}

WantedForm::Row& WantedForm::row(WishPart part) { return *std::ranges::find(m_rows, part, &Row::part); }

std::optional<WantedWindow> WantedForm::wish() const {
    const auto typed = [this](WishPart part) { return std::ranges::find(m_rows, part, &Row::part)->typed; };
    const bool isReadable = std::ranges::none_of(m_rows, &Row::isUnreadable);
    const auto width = typed(WishPart::Width);
    const auto height = typed(WishPart::Height);
    if (!isReadable || !width || !height) return std::nullopt;
    const double corner = typed(WishPart::Corner).value_or(cornerLeft(m_session.project()));
    return WantedWindow{*width, *height, corner, typed(WishPart::Across), typed(WishPart::Up)};
}

void WantedForm::refresh() {
    if (isHidden()) return;
    for (const Row& each : m_rows) {
        each.field->setUnits(m_session.project().units);
        each.trouble->setText(each.isUnreadable ? each.field->toolTip() : QString());
        each.trouble->setVisible(each.isUnreadable);
    }
    m_answer->hide();
    const auto wanted = wish();
    m_lay->setEnabled(false);
    offerSteering(wanted);
    if (!wanted) return;
    const auto window = layWindow(m_session.project(), *wanted);
    if (!window) return tellRefusal(window.error());
    m_lay->setEnabled(true);
    tellLaid(*window);
}

void WantedForm::tellRefusal(const WishRefusal& refusal) {
    QLabel* beside = row(refusal.part).trouble;
    beside->setText(QString::fromStdString(refusal.sentence));
    beside->show();
}

void WantedForm::tellLaid(const LaidWish& window) {
    const Units units = m_session.project().units;
    const QString corners = window.boreRadius
                                ? tr("Its corners are bored to a radius of %1.").arg(lengthUnitFor(*window.boreRadius, units))
                                : tr("The bit leaves corners of %1 in the work.").arg(lengthUnitFor(window.cornerLeft, units));
    m_answer->setText(tr("The opening in the template is %1. %2 The smallest good blank is %3.")
                          .arg(sizeText(window.opening, units), corners, sizeText(window.goodBlank, units)));
    m_answer->show();
}

void WantedForm::offerSteering(const std::optional<WantedWindow>& wish) {
    m_offered = wish ? otherSteering(m_session.project(), *wish) : std::nullopt;
    m_other->setVisible(m_offered.has_value());
    if (m_offered) m_other->setText(steeringText(*m_offered, m_session.project().units));
}

void WantedForm::lay(const Project& from, const QString& step) {
    const auto wanted = wish();
    if (!wanted) return;
    const auto window = layWindow(from, *wanted, m_session.highestLine());
    if (!window) return tellRefusal(window.error());
    for (Row& each : m_rows) {
        each.typed.reset();
        each.field->showAnyway(std::nullopt);
    }
    m_session.changeWhole(step, window->project);
    Q_EMIT laid();
}

void WantedForm::showEvent(QShowEvent* event) {
    QFrame::showEvent(event);
    refresh();
}

void WantedForm::focusFirst() { m_rows.front().field->setFocus(Qt::ShortcutFocusReason); }

}  // namespace kerfwall
