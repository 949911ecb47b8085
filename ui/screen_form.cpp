// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/screen_form.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QScreen>

#include "ui/length_field.h"
#include "ui/screen_bar.h"
#include "ui/screen_scale.h"
#include "ui/session.h"

namespace kerfwall {
namespace {

constexpr double kShortest = 10;  // mm a bar of some hundred pixels can measure
constexpr double kLongest = 2000;
constexpr int kFieldWidth = 150;

}  // namespace

ScreenForm::ScreenForm(Session& session, QWidget* plan, QWidget* parent)
    : QFrame(parent), m_session(session), m_bar(new ScreenBar(plan)), m_field(new LengthField(this)), m_answer(new QLabel(this)) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 18);
    grid->setVerticalSpacing(6);
    grid->setColumnStretch(0, 1);
    auto* heading = new QLabel(tr("Life size on this screen"), this);
    heading->setObjectName(QStringLiteral("sectionTitle"));
    auto* done = new QPushButton(tr("Done"), this);
    done->setObjectName(QStringLiteral("screenDone"));
    auto* label = new QLabel(tr("By the ruler this bar is"), this);
    label->setBuddy(m_field);
    m_field->setObjectName(QStringLiteral("screenBarLength"));
    m_field->setAccessibleName(tr("Length of the bar by your ruler"));
    m_field->setFixedWidth(kFieldWidth);
    m_field->setRange(kShortest, kLongest, tr("This must be 10 to 2000 mm."));
    m_answer->setObjectName(QStringLiteral("screenAnswer"));
    m_answer->setWordWrap(true);
    grid->addWidget(heading, 0, 0);
    grid->addWidget(done, 0, 1);
    grid->addWidget(label, 1, 0);
    grid->addWidget(m_field, 1, 1);
    grid->addWidget(m_answer, 2, 0, 1, 2);
    connect(done, &QPushButton::clicked, this, &ScreenForm::closeAsked);
    connect(m_field, &LengthField::entered, this, &ScreenForm::take);
    connect(m_field, &LengthField::left, this, &ScreenForm::closeAsked);
    connect(m_field, &LengthField::troubled, this, [this](const QString& sentence) {
        if (sentence.isEmpty()) refresh();
        else m_answer->setText(sentence);
    });
    connect(&m_session, &Session::changed, this, &ScreenForm::refresh);
    hide();
}

void ScreenForm::focusFirst() { m_field->setFocus(Qt::ShortcutFocusReason); }

void ScreenForm::showEvent(QShowEvent* event) {
    QFrame::showEvent(event);
    m_bar->lay();
    refresh();
}

void ScreenForm::hideEvent(QHideEvent* event) {
    QFrame::hideEvent(event);
    m_bar->hide();
}

void ScreenForm::refresh() {
    if (!isVisible()) return;
    m_field->setUnits(m_session.project().units);
    m_field->show(m_bar->barLength() / pixelsPerMm(*screen()));
    m_answer->setText(isMeasured(*screen()) ? tr("Life size is true on this screen.")
                                            : tr("Hold a ruler to the bar on the plan, from tick to tick, and type what it says."));
}

void ScreenForm::take(std::optional<double> mm) {
    const double shown = m_bar->barLength() / pixelsPerMm(*screen());
    if (!mm || (*mm == shown && isMeasured(*screen()))) return;
    keepPixelsPerMm(*screen(), m_bar->barLength() / *mm);
    refresh();
    Q_EMIT measured();
}

}  // namespace kerfwall
