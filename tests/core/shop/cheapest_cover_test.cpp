// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/cheapest_cover.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <bit>

#include "tests/oracle/dice.h"

namespace kerfwall {
namespace {

constexpr std::size_t kSteps = 100'000;

/// The price of the cheapest cover by trying every set of offers.
long byTryingAll(std::size_t jobs, const std::vector<Offer>& offers) {
    long least = 1L << 40;
    for (unsigned chosen = 0; chosen < (1u << offers.size()); ++chosen) {
        unsigned done = 0;
        long price = 0;
        for (std::size_t i = 0; i < offers.size(); ++i) {
            if ((chosen >> i & 1u) == 0) continue;
            price += offers[i].price;
            for (const std::size_t job : offers[i].jobs) done |= 1u << job;
        }
        if (done == (1u << jobs) - 1) least = std::min(least, price);
    }
    return least;
}

bool doesAll(std::size_t jobs, const std::vector<Offer>& offers, const Cover& cover) {
    std::vector<bool> done(jobs, false);
    for (const std::size_t offer : cover.offers) {
        for (const std::size_t job : offers[offer].jobs) done[job] = true;
    }
    return std::ranges::find(done, false) == done.end();
}

// Expected from: pencil. Three jobs, each two of them done by one offer: two offers, though the prices shared
// out come to one and a half.
TEST(CheapestCover, OfATriangleIsTwo) {
    const std::vector<Offer> offers{{{0, 1}, 1}, {{1, 2}, 1}, {{0, 2}, 1}};
    const Cover cover = cheapestCover(3, offers, kSteps);
    EXPECT_EQ(cover.price, 2);
    EXPECT_EQ(cover.bound, 2);
}

// Expected from: pencil. The greedy choice takes the offer of four first and needs three; two do.
TEST(CheapestCover, IsNotTheGreedyOne) {
    const std::vector<Offer> offers{{{1, 2, 3, 4}, 1}, {{0, 1, 2}, 1}, {{3, 4, 5}, 1}};
    const Cover cover = cheapestCover(6, offers, kSteps);
    EXPECT_EQ(cover.offers, (std::vector<std::size_t>{1, 2}));
}

TEST(CheapestCover, OfEqualsTakesTheEarlier) {  // Expected from: the header.
    EXPECT_EQ(cheapestCover(1, {{{0}, 2}, {{0}, 1}, {{0}, 1}}, kSteps).offers, (std::vector<std::size_t>{1}));
}

TEST(CheapestCover, OfNothingIsNothing) { EXPECT_EQ(cheapestCover(0, {}, kSteps), Cover{}); }

// Expected from: every set of up to twelve offers tried, 400 seeded questions of up to eight jobs.
TEST(CheapestCover, EqualsTryingAll) {
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        oracle::Dice dice(seed);
        const auto jobs = static_cast<std::size_t>(dice.between(2, 8));
        std::vector<Offer> offers;
        for (int i = dice.between(3, 12); i > 0; --i) {
            Offer offer{{}, dice.chance(50) ? 10 : dice.between(10, 13)};
            for (std::size_t job = 0; job < jobs; ++job) {
                if (dice.chance(35)) offer.jobs.push_back(job);
            }
            if (!offer.jobs.empty()) offers.push_back(offer);
        }
        const long least = byTryingAll(jobs, offers);
        if (least == 1L << 40) continue;
        const Cover cover = cheapestCover(jobs, offers, kSteps);
        EXPECT_EQ(cover.price, least) << "seed " << seed;
        EXPECT_EQ(cover.bound, least) << "seed " << seed;
        EXPECT_TRUE(doesAll(jobs, offers, cover)) << "seed " << seed;
    }
}

// Expected from: the least there can be lies between bound and price, whatever the search may spend.
TEST(CheapestCover, HasATrueBoundWhereItGivesUp) {
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        oracle::Dice dice(seed);
        std::vector<Offer> offers;
        for (int i = 0; i < 14; ++i) {
            Offer offer{{}, 10};
            for (std::size_t job = 0; job < 12; ++job) {
                if (dice.chance(25)) offer.jobs.push_back(job);
            }
            if (!offer.jobs.empty()) offers.push_back(offer);
        }
        const long least = byTryingAll(12, offers);
        if (least == 1L << 40) continue;
        const Cover cover = cheapestCover(12, offers, 1);
        EXPECT_LE(cover.bound, least) << "seed " << seed;
        EXPECT_GE(cover.price, least) << "seed " << seed;
        EXPECT_TRUE(doesAll(12, offers, cover)) << "seed " << seed;
    }
}

}  // namespace
}  // namespace kerfwall
