// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <vector>

#include "core/shop/stock_panels.h"
#include "ui/shelf.h"

class QPushButton;
class QVBoxLayout;

namespace kerfwall {

/// What an empty sheet offers to begin with, in the plan's place: the size wanted in the work, a panel of the rack, files
/// that were open lately, a template of the shelf, a sample. Arrow keys go from offer to offer, Enter takes one, Esc puts
/// the sheet aside.
class FirstSheet : public QFrame {
    Q_OBJECT

public:
    explicit FirstSheet(QWidget* parent = nullptr);

    /// Makes its offers anew: what lies on the sheet, in the rack and on the shelf now.
    void refresh(const Project& project, const QStringList& lastFiles);
    void focusFirst();
    /// True where its sizes are shown in those units.
    bool isIn(Units units) const { return m_units == units; }

Q_SIGNALS:
    void sizeAsked(int shape);  ///< WantedForm::Shape
    void panelAsked(const kerfwall::StockPanel& panel);
    void fileAsked(const QString& path);
    void sampleAsked(const QString& path);
    void shelfAsked();  ///< its folder is to be chosen
    void asideAsked();  ///< the panel that lies there will do

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Section {
        QVBoxLayout* offers = nullptr;
        QString title;
    };
    Section addSection(QVBoxLayout* column, const QString& title, const QString& name);
    QPushButton* offer(Section& section, const QString& text, const QString& detail, const QString& name);
    void offerSizes();
    void offerPanels(const Project& project);
    void offerShelf(Units units);
    void offerTemplates(Section& section, const std::vector<ShelfTemplate>& templates, const QString& name);
    void clear();

    Section m_sizes, m_panels, m_last, m_shelf, m_samples;
    std::vector<QPushButton*> m_offers;
    Units m_units = Units::Millimetres;
};

}  // namespace kerfwall
