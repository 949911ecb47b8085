// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <expected>
#include <vector>

#include "core/says/project.h"

namespace kerfwall {

/// A template that lies on the shelf, among the samples, or was open lately.
struct ShelfTemplate {
    QString path;
    QString title;  ///< the file's name where it has none
    QString size;   ///< its panel's; "" where the file can't be read
};

/// Reads a template. Refuses it with one sentence that names the file and the place.
[[nodiscard]] std::expected<Project, QString> readTemplate(const QString& path);

/// The folder of the shop's templates, kept in the settings; "" until one was chosen.
[[nodiscard]] QString shelfFolder();
void keepShelfFolder(const QString& folder);

/// The templates in a folder by their titles, at most `most`. Sizes in `units`.
[[nodiscard]] std::vector<ShelfTemplate> templatesIn(const QString& folder, Units units, int most);

/// Those files as far as they are still there, in that order.
[[nodiscard]] std::vector<ShelfTemplate> templatesAt(const QStringList& paths, Units units);

/// Where the samples that come with the program lie.
[[nodiscard]] QString sampleFolder();

}  // namespace kerfwall
