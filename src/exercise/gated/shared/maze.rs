//! A small maze drawn by lot: a grid of cells with exactly one way from any cell to any other.

use std::collections::{BTreeMap, BTreeSet};

use crate::chance::Dice;

/// A cell by column and row, or a corner of the grid by its lines.
pub(super) type Cell = (u32, u32);

/// A maze.
pub(super) struct Maze {
    columns: u32,
    rows: u32,
    /// Neighbours with a passage between them, the upper or left one first.
    passages: BTreeSet<(Cell, Cell)>,
}

impl Maze {
    /// Walks on from cell to cell as long as a neighbour is new, then back to the last cell that has one: each cell is
    /// reached once. Depth-first search, from memory.
    pub(super) fn new(dice: &mut Dice, columns: u32, rows: u32) -> Self {
        let mut maze = Self { columns, rows, passages: BTreeSet::new() };
        let mut seen = BTreeSet::from([maze.start()]);
        let mut trail = vec![maze.start()];
        while let Some(&here) = trail.last() {
            let new: Vec<Cell> = maze.neighbours(here).into_iter().filter(|cell| !seen.contains(cell)).collect();
            let count = u32::try_from(new.len()).unwrap_or(u32::MAX);
            match new.get(dice.below(count) as usize) {
                Some(&next) => {
                    maze.passages.insert((here.min(next), here.max(next)));
                    seen.insert(next);
                    trail.push(next);
                }
                None => {
                    trail.pop();
                }
            }
        }
        maze
    }

    /// The upper left cell.
    pub(super) fn start(&self) -> Cell {
        (0, 0)
    }

    /// The lower right cell.
    pub(super) fn goal(&self) -> Cell {
        (self.columns - 1, self.rows - 1)
    }

    pub(super) fn cells(&self) -> impl Iterator<Item = Cell> + use<> {
        let columns = self.columns;
        (0..self.rows).flat_map(move |row| (0..columns).map(move |column| (column, row)))
    }

    fn neighbours(&self, (column, row): Cell) -> Vec<Cell> {
        let mut out = Vec::new();
        out.extend(column.checked_sub(1).map(|left| (left, row)));
        out.extend(row.checked_sub(1).map(|up| (column, up)));
        out.extend((column + 1 < self.columns).then_some((column + 1, row)));
        out.extend((row + 1 < self.rows).then_some((column, row + 1)));
        out
    }

    pub(super) fn is_open(&self, a: Cell, b: Cell) -> bool {
        self.passages.contains(&(a.min(b), a.max(b)))
    }

    /// The cells of the one way from start to goal.
    pub(super) fn route(&self) -> Vec<Cell> {
        let mut from: BTreeMap<Cell, Cell> = BTreeMap::new();
        let mut open = vec![self.start()];
        while let Some(here) = open.pop() {
            for next in self.neighbours(here) {
                if self.is_open(here, next) && from.get(&here) != Some(&next) {
                    from.insert(next, here);
                    open.push(next);
                }
            }
        }
        let mut route = vec![self.goal()];
        while let Some(&before) = route.last().and_then(|cell| from.get(cell)) {
            route.push(before);
        }
        route.reverse();
        route
    }

    /// The inner walls, each from one corner of the grid to another; those in one line are one.
    pub(super) fn walls(&self) -> Vec<(Cell, Cell)> {
        let mut walls: Vec<(Cell, Cell)> = Vec::new();
        let mut add = |from: Cell, to: Cell| match walls.last_mut() {
            Some(last) if last.1 == from && (last.0.0 == to.0 || last.0.1 == to.1) => last.1 = to,
            _ => walls.push((from, to)),
        };
        for x in 1..self.columns {
            for y in (0..self.rows).filter(|&y| !self.is_open((x - 1, y), (x, y))) {
                add((x, y), (x, y + 1));
            }
        }
        for y in 1..self.rows {
            for x in (0..self.columns).filter(|&x| !self.is_open((x, y - 1), (x, y))) {
                add((x, y), (x + 1, y));
            }
        }
        walls
    }
}
