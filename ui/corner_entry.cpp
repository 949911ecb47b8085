// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/corner_entry.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr int kListHeight = 116;  // pixels: five lines

}  // namespace

CornerEntry::CornerEntry(QWidget* parent)
    : QWidget(parent), m_head(new QLabel(this)), m_list(new QPlainTextEdit(this)), m_trouble(new QLabel(this)),
      m_click(new QPushButton(tr("Click them on the plan"), this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    m_list->setObjectName(QStringLiteral("wantedCorners"));
    m_list->setAccessibleName(tr("Corners, one a line: x, then y"));
    m_list->setTabChangesFocus(true);
    m_list->setFixedHeight(kListHeight);
    m_list->installEventFilter(this);
    m_head->setBuddy(m_list);
    m_head->setWordWrap(true);
    m_trouble->setObjectName(QStringLiteral("wantedCornersTrouble"));
    m_trouble->setProperty("trouble", true);
    m_trouble->setWordWrap(true);
    m_trouble->hide();
    m_click->setObjectName(QStringLiteral("wantedClick"));
    m_click->setCheckable(true);
    column->addWidget(m_head);
    column->addWidget(m_list);
    column->addWidget(m_trouble);
    column->addWidget(m_click, 0, Qt::AlignRight);
    connect(m_list, &QPlainTextEdit::textChanged, this, [this] {
        if (m_list->toPlainText().isEmpty()) m_units = m_shown;
        showHead();
        Q_EMIT changed();
    });
    connect(m_click, &QPushButton::clicked, this, &CornerEntry::clickAsked);
    showHead();
}

CornerList CornerEntry::read() const { return readCorners(m_list->toPlainText().toStdString(), m_units); }

void CornerEntry::setUnits(Units units) {
    m_shown = units;
    if (m_list->toPlainText().isEmpty()) m_units = units;
    showHead();
}

void CornerEntry::showHead() {
    m_list->setPlaceholderText(m_units == Units::Inches ? tr("4 1/2, 3\n14, 3\n12 3/4, 6") : tr("110, 90\n370, 90\n330, 150"));
    m_head->setText(m_units == Units::Inches ? tr("Corners in inches, one a line: x, then y") : tr("Corners in mm, one a line: x, then y"));
}

void CornerEntry::add(Point corner) {
    m_list->appendPlainText(QString::fromStdString(cornersText({corner}, m_units, decimalSign())));
}

void CornerEntry::setCorners(const std::vector<Point>& corners) {
    QStringList lines;
    const auto words = [](double mm) { return QString::number(mm, 'f', 3); };
    for (const Point& corner : corners) lines += words(corner.x) + QStringLiteral(", ") + words(corner.y);
    m_list->clear();
    m_units = Units::Millimetres;
    m_list->setPlainText(lines.join(QLatin1Char('\n')));
}

bool CornerEntry::takeLast() {
    QStringList lines = m_list->toPlainText().trimmed().split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    if (lines.isEmpty()) return false;
    lines.removeLast();
    m_list->setPlainText(lines.join(QLatin1Char('\n')));
    return true;
}

void CornerEntry::clear() { m_list->clear(); }

void CornerEntry::tell(const QString& trouble) {
    m_trouble->setText(trouble);
    m_trouble->setVisible(!trouble.isEmpty());
    m_list->setAccessibleDescription(trouble);
}

void CornerEntry::showClicking(bool clicking) { m_click->setChecked(clicking); }

bool CornerEntry::eventFilter(QObject* watched, QEvent* event) {
    const bool isEsc = event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape;
    if (!isEsc) return QWidget::eventFilter(watched, event);
    Q_EMIT left();
    return true;
}

}  // namespace kerfwall
