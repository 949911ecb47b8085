// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shelf.h"

#include <QCollator>
#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSettings>
#include <algorithm>

#include "core/says/project_text.h"
#include "ui/rack.h"
#include "ui/wish_words.h"

namespace kerfwall {
namespace {

constexpr qint64 kLargestFile = 16 * 1024 * 1024;  // bytes, as the project file says
const QString kShelfKey = QStringLiteral("shelf");

QString text(const char* source) { return QCoreApplication::translate("kerfwall::Shelf", source); }

ShelfTemplate templateAt(const QString& path, Units units) {
    ShelfTemplate shown{path, QFileInfo(path).completeBaseName(), {}};
    const auto project = readTemplate(path);
    if (!project) return shown;
    if (!project->title.empty()) shown.title = QString::fromStdString(project->title);
    shown.size = panelText(stockPanelOf(*project), units);
    return shown;
}

}  // namespace

std::expected<Project, QString> readTemplate(const QString& path) {
    QFile file(path);
    const QString shown = QFileInfo(path).fileName();
    if (!file.open(QIODevice::ReadOnly)) return std::unexpected(text("%1 can't be opened: %2.").arg(shown, file.errorString()));
    const QByteArray bytes = file.read(kLargestFile + 1);
    const auto project = readProject(std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
    if (project) return *project;
    return std::unexpected(text("%1 was not opened. %2 %3")
                               .arg(shown, QString::fromStdString(project.error().pointer), QString::fromStdString(project.error().sentence))
                               .simplified());
}

QString shelfFolder() { return QSettings().value(kShelfKey).toString(); }

void keepShelfFolder(const QString& folder) { QSettings().setValue(kShelfKey, folder); }

std::vector<ShelfTemplate> templatesIn(const QString& folder, Units units, int most) {
    const QDir dir(folder);
    QStringList paths;
    for (const QString& name : dir.entryList({QStringLiteral("*.kerfwall")}, QDir::Files, QDir::Name)) {
        if (paths.size() < most) paths << dir.filePath(name);
    }
    std::vector<ShelfTemplate> shelf = templatesAt(paths, units);
    QCollator collator;
    collator.setNumericMode(true);
    std::ranges::stable_sort(shelf, [&](const auto& a, const auto& b) { return collator.compare(a.title, b.title) < 0; });
    return shelf;
}

std::vector<ShelfTemplate> templatesAt(const QStringList& paths, Units units) {
    std::vector<ShelfTemplate> templates;
    for (const QString& path : paths) {
        if (QFileInfo::exists(path)) templates.push_back(templateAt(path, units));
    }
    return templates;
}

QString sampleFolder() { return QStringLiteral(":/samples"); }

}  // namespace kerfwall
