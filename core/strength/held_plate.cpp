// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/strength/held_plate.h"

#include <Eigen/SparseCholesky>

namespace kerfwall {
namespace {

using Sparse = Eigen::SparseMatrix<double>;
using Vector = Eigen::VectorXd;
using Element = Eigen::Matrix<double, 12, 12>;

/// How each node's movement shows in the strains at a place of a triangle: shares of its corners there, and how these shares grow
/// along x and y.
Eigen::Matrix<double, 3, 12> strainsOf(const std::array<double, 3>& share, const std::array<Point, 3>& growth) {
    Eigen::Matrix<double, 3, 12> strains = Eigen::Matrix<double, 3, 12>::Zero();
    const auto add = [&](int node, Point slope) {
        strains(0, 2 * node) = slope.x;
        strains(1, 2 * node + 1) = slope.y;
        strains(2, 2 * node) = slope.y;
        strains(2, 2 * node + 1) = slope.x;
    };
    for (std::size_t i = 0; i < 3; ++i) {
        const std::size_t next = (i + 1) % 3;
        add(static_cast<int>(i), (4 * share[i] - 1) * growth[i]);
        add(static_cast<int>(3 + i), 4 * (share[next] * growth[i] + share[i] * growth[next]));
    }
    return strains;
}

Element stiffnessOf(const PlateMesh& mesh, std::size_t triangle, const Eigen::Matrix3d& elastic) {
    const auto& six = mesh.triangles[triangle];
    const Point a = mesh.nodes[six[0]];
    const Point b = mesh.nodes[six[1]];
    const Point c = mesh.nodes[six[2]];
    const double twice = cross(b - a, c - a);
    const auto growthFrom = [&](Point one, Point other) { return (1 / twice) * Point{one.y - other.y, other.x - one.x}; };
    const std::array<Point, 3> growth{growthFrom(b, c), growthFrom(c, a), growthFrom(a, b)};
    Element stiffness = Element::Zero();
    for (std::size_t i = 0; i < 3; ++i) {
        std::array<double, 3> share{kFarShare, kFarShare, kFarShare};
        share[i] = kNearShare;
        const auto strains = strainsOf(share, growth);
        stiffness += mesh.thickness[triangle][i] * (twice / 6) * strains.transpose() * elastic * strains;
    }
    return stiffness;
}

Eigen::Matrix3d planeStress(const Elastic& elastic) {
    Eigen::Matrix3d matrix;
    const double nu = elastic.poisson;
    matrix << 1, nu, 0, nu, 1, 0, 0, 0, (1 - nu) / 2;
    return elastic.modulus / (1 - nu * nu) * matrix;
}

}  // namespace

struct HeldPlate::Factors {
    std::vector<int> unknown;  // of each node: the first of its two; -1: held
    int count = 0;
    Eigen::SimplicialLDLT<Sparse> cholesky;
};

HeldPlate::HeldPlate(const PlateMesh& mesh, const Elastic& elastic) : m_factors(std::make_unique<Factors>()) {
    for (const char isHeld : mesh.isHeld) {
        m_factors->unknown.push_back(isHeld ? -1 : m_factors->count);
        if (!isHeld) m_factors->count += 2;
    }
    const Eigen::Matrix3d matrix = planeStress(elastic);
    std::vector<Eigen::Triplet<double>> entries;
    entries.reserve(144 * mesh.triangles.size());
    for (std::size_t triangle = 0; triangle < mesh.triangles.size(); ++triangle) {
        const Element stiffness = stiffnessOf(mesh, triangle, matrix);
        for (std::size_t i = 0; i < 12; ++i) {
            const int row = m_factors->unknown[mesh.triangles[triangle][i / 2]];
            for (std::size_t j = 0; j < 12; ++j) {
                const int column = m_factors->unknown[mesh.triangles[triangle][j / 2]];
                if (row < 0 || column < 0) continue;
                entries.emplace_back(row + static_cast<int>(i % 2), column + static_cast<int>(j % 2),
                                     stiffness(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(j)));
            }
        }
    }
    Sparse whole(m_factors->count, m_factors->count);
    whole.setFromTriplets(entries.begin(), entries.end());
    m_factors->cholesky.compute(whole);
}

HeldPlate::~HeldPlate() = default;

bool HeldPlate::isSound() const { return m_factors->count > 0 && m_factors->cholesky.info() == Eigen::Success; }

std::vector<double> HeldPlate::loadOf(const std::vector<NodeForce>& forces) const {
    std::vector<double> load(static_cast<std::size_t>(m_factors->count));
    for (const NodeForce& each : forces) {
        const int at = m_factors->unknown[each.node];
        if (at < 0) continue;
        load[static_cast<std::size_t>(at)] += each.force.x;
        load[static_cast<std::size_t>(at) + 1] += each.force.y;
    }
    return load;
}

double HeldPlate::givesTo(const std::vector<NodeForce>& forces) const {
    // With K = P' L D L' P the work f' K^-1 f is the sum of squares of L^-1 P f over D: half the way of a whole solution.
    const std::vector<double> load = loadOf(forces);
    Vector part = m_factors->cholesky.permutationP() * Eigen::Map<const Vector>(load.data(), m_factors->count);
    m_factors->cholesky.matrixL().solveInPlace(part);
    return (part.array().square() / m_factors->cholesky.vectorD().array()).sum();
}

std::vector<Point> HeldPlate::movedBy(const std::vector<NodeForce>& forces) const {
    const std::vector<double> load = loadOf(forces);
    const Vector moved = m_factors->cholesky.solve(Eigen::Map<const Vector>(load.data(), m_factors->count));
    std::vector<Point> nodes;
    for (const int at : m_factors->unknown) nodes.push_back(at < 0 ? Point{} : Point{moved[at], moved[at + 1]});
    return nodes;
}

}  // namespace kerfwall
