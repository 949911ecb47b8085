// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of the form for what is wanted; what they add up to stands in wanted_form.cpp.
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <algorithm>

#include "ui/corner_entry.h"
#include "ui/corner_tool.h"
#include "ui/length_field.h"
#include "ui/session.h"
#include "ui/wanted_form.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr double kMostWanted = 3000;  // mm: no panel is larger
constexpr double kMostLean = 60;      // degrees
constexpr int kFieldWidth = 130;

QLabel* wrapped(const QString& name, QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setObjectName(name);
    label->setWordWrap(true);
    label->hide();
    return label;
}

}  // namespace

WantedForm::WantedForm(Session& session, Selection& selection, QWidget* parent)
    : QFrame(parent), m_session(session), m_grid(new QGridLayout(this)), m_cornerTool(new CornerTool(session, selection, this)) {
    m_grid->setContentsMargins(0, 0, 0, 18);
    m_grid->setVerticalSpacing(6);
    m_grid->setColumnStretch(0, 1);
    makeHead();
    makeRows();
    makePlaceRows();
    makeFoot();
    connectCorners();
    connect(&m_session, &Session::changed, this, &WantedForm::refresh);
    hide();
}

void WantedForm::makeHead() {
    auto* heading = new QLabel(tr("Wanted in the work"), this);
    heading->setObjectName(QStringLiteral("sectionTitle"));
    auto* leave = new QPushButton(tr("Put aside"), this);
    leave->setObjectName(QStringLiteral("wantedLeave"));
    m_grid->addWidget(heading, 0, 0);
    m_grid->addWidget(leave, 0, 1);
    connect(leave, &QPushButton::clicked, this, &WantedForm::closeAsked);
    m_shape = addChoice(QStringLiteral("wantedShape"), tr("Shape"));
    m_shape->addItems({tr("A window"), tr("A leg frame"), tr("By its corners")});
    connect(m_shape, &QComboBox::currentIndexChanged, this, [this] {
        if (shape() != PolygonShape) endClicking();
        refresh();
    });
}

QComboBox* WantedForm::addChoice(const QString& name, const QString& said) {
    auto* box = new QComboBox(this);
    box->setObjectName(name);
    box->setAccessibleName(said);
    auto* label = new QLabel(said, this);
    label->setBuddy(box);
    const int at = m_grid->rowCount();
    m_grid->addWidget(label, at, 0);
    m_grid->addWidget(box, at, 1);
    box->setFixedWidth(kFieldWidth);
    return box;
}

void WantedForm::makeRows() {
    addRow({Entry::Width, tr("Width"), QStringLiteral("wantedWidth"), {}});
    addRow({Entry::Height, tr("Height"), QStringLiteral("wantedHeight"), {}});
    addRow({Entry::Span, tr("Over both legs at the feet"), QStringLiteral("wantedSpan"), {}});
    addRow({Entry::LegHeight, tr("From the feet to the rail"), QStringLiteral("wantedLegHeight"), {}});
    addRow({Entry::LegTop, tr("A leg's width at the rail"), QStringLiteral("wantedLegTop"), {}});
    addRow({Entry::LegFoot, tr("A leg's width at the foot"), QStringLiteral("wantedLegFoot"), tr("as at the rail")});
    addRow({Entry::InnerLean, tr("Inner sides lean by"), QStringLiteral("wantedInnerLean"), tr("as the widths say"), true});
    addRow({Entry::OuterLean, tr("Outer sides lean by"), QStringLiteral("wantedOuterLean"), tr("upright"), true});
    m_corners = new CornerEntry(this);
    m_grid->addWidget(m_corners, m_grid->rowCount(), 0, 1, 2);
    addRow({Entry::Corner, tr("Corner radius"), QStringLiteral("wantedCorner"), tr("as the bit leaves")});
}

void WantedForm::makePlaceRows() {
    m_placedOn = addChoice(QStringLiteral("wantedPlacedOn"), tr("Its place counts from the edges of"));
    m_placedOn->addItems({tr("the panel"), tr("the work")});
    addRow({Entry::WorkWidth, tr("The work is wide"), QStringLiteral("wantedWorkWidth"), {}});
    addRow({Entry::WorkHeight, tr("The work is high"), QStringLiteral("wantedWorkHeight"), {}});
    const auto choice = [this](const QString& name, const QString& said, const QStringList& options) {
        auto* box = new QComboBox(this);
        box->setObjectName(name);
        box->setAccessibleName(said);
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->addItems(options);
        connect(box, &QComboBox::currentIndexChanged, this, &WantedForm::refresh);
        return box;
    };
    m_acrossFrom = choice(QStringLiteral("wantedAcrossFrom"), tr("Place across"),
                          {tr("Across: where it suits"), tr("Across: in the middle"), tr("Middle from left edge"),
                           tr("Left side from left edge"), tr("Right side from right edge")});
    m_upFrom = choice(QStringLiteral("wantedUpFrom"), tr("Place upwards"),
                      {tr("Upwards: where it suits"), tr("Upwards: in the middle"), tr("Middle from bottom edge"),
                       tr("Lower side from bottom edge"), tr("Upper side from top edge")});
    addRow({Entry::Across, tr("Distance across"), QStringLiteral("wantedAcross"), tr("worked out")}, m_acrossFrom);
    addRow({Entry::Up, tr("Distance upwards"), QStringLiteral("wantedUp"), tr("worked out")}, m_upFrom);
    addRow({Entry::Feet, tr("Feet from the bottom edge"), QStringLiteral("wantedFeet"), tr("worked out")});
    connect(m_placedOn, &QComboBox::currentIndexChanged, this, &WantedForm::refresh);
}

void WantedForm::addRow(const RowText& text, QWidget* label) {
    auto* field = new LengthField(this);
    field->setObjectName(text.name);
    field->setAccessibleName(text.label);
    field->setFixedWidth(kFieldWidth);
    field->setMayBeEmpty(true);
    field->setPlaceholderText(text.emptyMeans);
    if (text.isAngle) {
        field->setKind(LengthField::Kind::Angle);
        field->setRange(-kMostLean, kMostLean, tr("This must be -60 to 60 degrees; more than 0 stands out at the feet."));
    } else {
        field->setRange(0, kMostWanted, tr("This must be 0 to 3000 mm."));
    }
    if (!label) {
        auto* words = new QLabel(text.label, this);
        words->setBuddy(field);
        label = words;
    }
    auto* trouble = wrapped(text.name + QStringLiteral("Trouble"), this);
    trouble->setProperty("trouble", true);
    const int at = m_grid->rowCount();
    m_grid->addWidget(label, at, 0);
    m_grid->addWidget(field, at, 1);
    m_grid->addWidget(trouble, at + 1, 0, 1, 2);
    m_rows.push_back({text.entry, label, field, trouble, std::nullopt});
    connectRow(field, text.entry);
}

void WantedForm::connectRow(LengthField* field, Entry entry) {
    connect(field, &LengthField::typed, this, [this, entry](std::optional<double> value) {
        row(entry).typed = value;
        row(entry).isUnreadable = false;
        if (entry == Entry::LegFoot && value) row(Entry::InnerLean).field->showAnyway(row(Entry::InnerLean).typed = std::nullopt);
        if (entry == Entry::InnerLean && value) row(Entry::LegFoot).field->showAnyway(row(Entry::LegFoot).typed = std::nullopt);
        // A distance with nothing chosen to count it from is the middle's.
        constexpr int kMiddle = static_cast<int>(PlaceAlong::From::Middle);
        for (const auto& [which, from] : {std::pair(Entry::Across, m_acrossFrom), std::pair(Entry::Up, m_upFrom)}) {
            if (entry == which && value && from->currentIndex() < kMiddle) from->setCurrentIndex(kMiddle);
            if (entry == which && !value) from->setCurrentIndex(0);
        }
        refresh();
    });
    connect(field, &LengthField::troubled, this, [this, entry](const QString& sentence) {
        // What cannot be read leaves the field as it was before, and so the wish.
        row(entry).typed = row(entry).field->value();
        row(entry).isUnreadable = !sentence.isEmpty();
        refresh();
    });
    connect(field, &LengthField::entered, this, [this, entry](std::optional<double> value) {
        row(entry).typed = value;
        refresh();
    });
    connect(field, &QLineEdit::returnPressed, this, [this] {
        if (m_lay->isEnabled()) m_lay->click();
    });
    connect(field, &LengthField::left, this, &WantedForm::closeAsked);
}

void WantedForm::connectCorners() {
    connect(m_corners, &CornerEntry::changed, this, &WantedForm::refresh);
    connect(m_corners, &CornerEntry::left, this, &WantedForm::closeAsked);
    connect(m_corners, &CornerEntry::clickAsked, this, &WantedForm::clickAsked);
    connect(m_cornerTool, &CornerTool::clicked, m_corners, &CornerEntry::add);
    connect(m_cornerTool, &CornerTool::closed, this, [this] {
        endClicking();
        m_lay->setFocus(Qt::OtherFocusReason);
    });
    connect(m_cornerTool, &CornerTool::backAsked, this, [this] {
        if (!m_corners->takeLast()) endClicking();
    });
}

void WantedForm::makeFoot() {
    m_answer = wrapped(QStringLiteral("wantedAnswer"), this);
    const auto offer = [this](const QString& name) {
        auto* button = new QPushButton(this);
        button->setObjectName(name);
        button->hide();
        m_grid->addWidget(button, m_grid->rowCount(), 0, 1, 2);
        return button;
    };
    m_grid->addWidget(m_answer, m_grid->rowCount(), 0, 1, 2);
    m_other = offer(QStringLiteral("wantedOther"));
    m_blank = offer(QStringLiteral("wantedBlank"));
    m_fromRack = offer(QStringLiteral("wantedRack"));
    m_lay = new QPushButton(tr("Lay its lines"), this);
    m_lay->setObjectName(QStringLiteral("wantedLay"));
    m_grid->addWidget(m_lay, m_grid->rowCount(), 1);
    connect(m_lay, &QPushButton::clicked, this, [this] { lay(m_session.project(), false); });
    connect(m_other, &QPushButton::clicked, this, [this] {
        if (m_offered) lay(steeredBy(m_session.project(), *m_offered), true);
    });
    connect(m_blank, &QPushButton::clicked, this, [this] {
        if (m_offeredBlank) takePanel(StockPanel(*m_offeredBlank));
    });
    connect(m_fromRack, &QPushButton::clicked, this, [this] {
        if (m_offeredPanel) takePanel(StockPanel(*m_offeredPanel));
    });
}

WantedForm::Row& WantedForm::row(Entry entry) { return *std::ranges::find(m_rows, entry, &Row::entry); }

bool WantedForm::isShown(Entry entry) const {
    switch (entry) {
        case Entry::Width:
        case Entry::Height: return shape() == WindowShape;
        case Entry::Span:
        case Entry::LegHeight:
        case Entry::LegTop:
        case Entry::LegFoot:
        case Entry::InnerLean:
        case Entry::OuterLean: return shape() == LegsShape;
        case Entry::Feet: return shape() == LegsShape && m_placedOn->currentIndex() == 0;
        case Entry::WorkWidth:
        case Entry::WorkHeight: return isOnUnknownWork();
        case Entry::Up: return shape() != LegsShape;
        case Entry::Corner:
        case Entry::Across: return true;
    }
    return true;
}

void WantedForm::showRows() {
    const Units units = m_session.project().units;
    m_corners->setUnits(units);
    m_corners->setVisible(shape() == PolygonShape);
    for (Row& each : m_rows) {
        each.isShown = isShown(each.entry);
        each.label->setVisible(each.isShown);
        each.field->setVisible(each.isShown);
        each.field->setUnits(units);
        each.trouble->setText(each.isUnreadable ? each.field->toolTip() : QString());
        each.trouble->setVisible(each.isShown && each.isUnreadable);
    }
    const auto emptyMeans = [](const QComboBox* from) { return isMeasured(*from) ? tr("type how far") : tr("worked out"); };
    row(Entry::Across).field->setPlaceholderText(emptyMeans(m_acrossFrom));
    row(Entry::Up).field->setPlaceholderText(emptyMeans(m_upFrom));
}

bool WantedForm::isMeasured(const QComboBox& from) {
    const auto chosen = static_cast<PlaceAlong::From>(from.currentIndex());
    return chosen != PlaceAlong::From::Suited && chosen != PlaceAlong::From::Centred;
}

void WantedForm::focusFirst() {
    if (shape() == PolygonShape) return m_corners->findChild<QWidget*>(QStringLiteral("wantedCorners"))->setFocus(Qt::ShortcutFocusReason);
    row(shape() == LegsShape ? Entry::Span : Entry::Width).field->setFocus(Qt::ShortcutFocusReason);
}

}  // namespace kerfwall
