// Solves mixed integer linear programs by HiGHS, the npm package highs 1.15.3 (MIT), for tst_*_milp. Each line of standard
// input is {"limit", "lp", "objectives"}: seconds for each objective, the rows in LP format, and objectives {variable: whole
// number} that are minimised one after the other, each held at its least value from then on. Each line of output is a list with
// one {"status", "value", "bound", "seconds"} for every objective that was tried: "optimal", "infeasible" or "stopped"; what
// follows a program that was not solved to its optimum is not tried. Objectives take whole values, so a gap below 1 is a proof.
// The packages of package.json are looked for in the folder given as the first argument.
'use strict';
const fs = require('fs');
const { createRequire } = require('module');
const loadHighs = createRequire(process.argv[2] + '/')('highs');

const options = {
    output_flag: false,
    mip_rel_gap: 0,
    mip_abs_gap: 0.9,
    mip_feasibility_tolerance: 1e-9,
    primal_feasibility_tolerance: 1e-9,
};
const noise = 0.01;

function solveOne(highs, model, objective, limit) {
    const { optimal, infeasible } = highs.constants.modelStatus;
    const names = Object.keys(objective);
    const columns = names.map((name) => model.getColByName(name));
    columns.forEach((column, i) => model.changeColCost(column, objective[names[i]]));
    model.zeroAllClocks();
    model.options.set({ time_limit: limit });
    const begin = process.cpuUsage();
    model.run();
    const used = process.cpuUsage(begin);
    const status = model.getModelStatus();
    const answer = { status: 'stopped', seconds: (used.user + used.system) / 1e6 };
    const value = model.info.get('objective_function_value');
    const found = model.info.get('primal_solution_status') === highs.constants.solutionStatus.feasible;
    answer.bound = Math.ceil(Math.max(model.info.get('mip_dual_bound'), -1e15) - noise);
    if (found) answer.value = Math.floor(value + noise);
    if (status === infeasible) answer.status = 'infeasible';
    if (status === optimal && answer.bound === answer.value) answer.status = 'optimal';
    if (answer.status === 'optimal') {
        const solution = model.getSolution().colValue;
        model.addRow(answer.value, answer.value, { indices: columns, values: names.map((name) => objective[name]) });
        columns.forEach((column) => model.changeColCost(column, 0));
        model.setSolution({ colValue: solution });
    }
    return answer;
}

function solve(highs, program) {
    return highs.withModel({ format: 'lp', data: program.lp }, (model) => {
        model.options.set(options);
        const answers = [];
        for (const objective of program.objectives) {
            if (Object.keys(objective).length === 0) {
                answers.push({ status: 'optimal', value: 0, bound: 0, seconds: 0 });
                continue;
            }
            answers.push(solveOne(highs, model, objective, program.limit));
            if (answers.at(-1).status !== 'optimal') break;
        }
        return answers;
    });
}

loadHighs().then((highs) => {
    for (const line of fs.readFileSync(0, 'utf8').trim().split('\n'))
        console.log(JSON.stringify(solve(highs, JSON.parse(line))));
});
