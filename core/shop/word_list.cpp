// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/word_list.h"

namespace kerfwall {

std::string listText(const std::vector<std::string>& words) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0) {
            text += i + 1 == words.size() ? " and " : ", ";
        }
        text += words[i];
    }
    return text;
}

}  // namespace kerfwall
