// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <vector>

#include "core/geometry/point.h"
#include "core/says/project.h"

namespace kerfwall {

/// A project of the samples.
[[nodiscard]] Project sampleProject(const QString& name);

/// What a program writes on its standard output; fails the test where it does not end with 0.
[[nodiscard]] QByteArray outputOf(const QString& program, const QStringList& arguments);

/// A stroke of two places as a PDF page has it, in mm from the page's top-left corner, y down.
struct PageStroke {
    int page = 0;  ///< from 1
    Point from;
    Point to;
    double width = 0;  ///< mm
};

/// All straight strokes of a PDF, by an independent reader.
[[nodiscard]] std::vector<PageStroke> strokesOf(const QString& pdf);

/// For each page of a PDF the largest font size, mm, of a line that begins with these words; 0 where none does.
[[nodiscard]] std::vector<double> sizesOf(const QString& pdf, const QString& words);

/// All of a PDF's texts.
[[nodiscard]] QString textOf(const QString& pdf);

}  // namespace kerfwall
