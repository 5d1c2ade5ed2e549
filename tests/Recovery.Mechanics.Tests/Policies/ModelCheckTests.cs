using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text.RegularExpressions;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using Xunit;

namespace Recovery.Mechanics.Tests.Policies;

/// <summary>
/// Every page of a model is held by two check values at least whose authority lies outside the project: a published print or a reference library. What was worked by hand or
/// stands from memory does not count. A page on a composition is held by the rows of the pieces that it composes.
/// </summary>
public class ModelCheckTests
{
    private static readonly string[] OutsideStandings = ["primary", "secondary", "reference library"];

    /// <summary>Page of the model, then where its rows are: file/model.</summary>
    private static readonly Dictionary<string, string[]> Rows = new(StringComparer.Ordinal)
    {
        ["adhesion"] = ["ground-machines-scipy/adhesion-api", "ground-machines-scipy/adhesion-navfac-line", "ground-machines-scipy/adhesion-tomlinson"],
        ["axle-statics"] = ["reference/axle-loads", "ground-machines-scipy/unloading"],
        ["base-shear"] = ["resistance-scipy/base-shear"],
        ["bekker-cone-index"] = ["ground-machines-scipy/bekker-cone"],
        ["bekker-wheel"] = ["terramechanics-scipy/bekker-wheel", "terramechanics-scipy/bekker-rut"],
        ["brixius"] = ["reference/brixius"],
        ["buried-wheel"] = ["resistance-scipy/faces", "resistance-scipy/rut-exit"],
        ["capstan"] = ["traction-scipy/capstan"],
        ["choosing-gear"] = ["rigging-gear-scipy/choice-own-stiffness"],
        ["consistency"] = ["ground/consistency-table"],
        ["critical-layer"] = ["ground/critical-layer", "ground-machines-scipy/profile-mean"],
        ["deadman"] = ["traction/deadman-power", "traction-scipy/deadman"],
        ["depth-rule"] = ["resistance-scipy/depth-rule"],
        ["deratings"] = ["rigging-gear/wet", "rigging-gear/temperature", "rigging-gear/termination", "rigging-gear/edge"],
        ["drawbar-pin"] = ["rigging-gear-scipy/drawbar-pin-spread"],
        ["duals"] = ["ground-machines-scipy/dual"],
        ["eye-fit"] = ["rigging-gear-scipy/eye-opening", "rigging-gear/eye-radius"],
        ["face-method"] = ["resistance-scipy/faces"],
        ["floor-bound"] = ["resistance-scipy/floor-wheel"],
        ["gear-tables"] = ["rigging-gear/chain-table", "rigging-gear/webbing-table", "rigging-gear/wire-table", "rigging-gear/natural-rope"],
        ["gee-clough"] = ["terramechanics/gee-clough-table", "terramechanics-scipy/gee-clough"],
        ["hard-surface"] = ["terramechanics-scipy/hard-surface"],
        ["haul-road"] = ["resistance-scipy/haul-road"],
        ["hitch"] = ["rigging-gear/sling-mode", "rigging-gear/choker", "rigging/choke-angle"],
        ["immersed-wheel"] = ["resistance-scipy/immersed"],
        ["keller"] = ["ground-machines-scipy/keller", "ground-machines-scipy/keller-stress"],
        ["lateral-breakout"] = ["resistance-scipy/immersed", "resistance-scipy/faces"],
        ["lee-breakout"] = ["resistance-scipy/breakout"],
        ["line-loads"] = ["reference/held-peak", "lines-scipy/take-up-in-time"],
        ["line-of-pull"] = ["lines-scipy/drop-at", "lines-scipy/slack-by-catenary"],
        ["lines-murphy"] = ["ground-machines-scipy/deflection"],
        ["liquidity-index"] = ["ground-machines-scipy/liquidity-index"],
        ["liu-breakout"] = ["resistance-scipy/breakout-time"],
        ["load-elongation"] = ["lines/braid", "lines-scipy/curve-energy"],
        ["machine-anchor"] = ["traction-scipy/machine-anchor"],
        ["machine-on-soils"] = ["terramechanics-scipy/machine-on-soils"],
        ["maclaurin"] = ["terramechanics-scipy/maclaurin"],
        ["mergeable-results"] = ["uncertainty-scipy/summary", "uncertainty-scipy/summary-quantile", "uncertainty-scipy/binomial"],
        ["model-comparison"] = ["terramechanics-scipy/self-mobility"],
        ["model-pull"] = ["traction-scipy/model-pull"],
        ["moisture-cone-index"] = ["ground-machines-scipy/moisture"],
        ["muga-breakout"] = ["resistance-scipy/breakout-time"],
        ["multi-pass"] = ["terramechanics-scipy/multi-pass"],
        ["nelson-wheat"] = ["ground-machines-scipy/nelson"],
        ["nominal-pressure"] = ["ground-machines-scipy/nominal-pressure"],
        ["osullivan"] = ["ground-machines-scipy/osullivan"],
        ["partial-factor"] = ["rigging-gear/partial-load", "rigging-gear/partial-material", "rigging-gear/partial-reduction", "rigging-gear/partial-twist"],
        ["payload"] = ["machines/printed-density"],
        ["peat"] = ["ground-machines-scipy/peat", "ground-machines-scipy/amarjan"],
        ["picket"] = ["traction/picket-steel", "traction/picket-wood", "traction/picket-inclined"],
        ["plan-sampling"] = ["uncertainty-scipy/spread", "uncertainty-scipy/summary", "uncertainty-scipy/failure-probability"],
        ["plate-breakout"] = ["resistance-scipy/breakout"],
        ["pull-capability"] = ["reference/towing-machine"],
        ["pull-choice"] = ["traction/stall-sizing", "traction/tackle-rule", "traction-scipy/tackle-way"],
        ["pull-demand"] = ["reference/whole-machine"],
        ["rating-cone-index"] = ["terramechanics-scipy/excess", "terramechanics/go-once", "terramechanics/go-fifty-times"],
        ["recoil"] = ["reference/linear-line", "lines-scipy/fitting-by-trips", "lines-scipy/flight"],
        ["reliability"] = ["uncertainty-scipy/first-order", "uncertainty-scipy/failure-probability"],
        ["reverse-bearing"] = ["resistance-scipy/breakout"],
        ["rig-check"] = ["rigging-gear/partial-load", "rigging-gear/partial-material", "rigging-gear/shackle-ultimate", "rigging/bridle-load-factor"],
        ["rig-graph"] = ["load-path-scipy/ring", "load-path-scipy/eye-in-space", "load-path-scipy/eye-with-friction"],
        ["rotating-inertia"] = ["traction-scipy/rotating-inertia"],
        ["rut-exit"] = ["resistance-scipy/rut-exit"],
        ["saarilahti"] = ["ground-machines-scipy/deflection"],
        ["sampling"] = ["uncertainty/philox", "uncertainty-scipy/normal-cdf", "uncertainty-scipy/normal-inverse", "uncertainty-scipy/spread"],
        ["self-recovery"] = ["resistance-scipy/own-wheels", "resistance-scipy/own-wheels-turned"],
        ["several-machines"] = ["traction-scipy/team-in-line", "traction-scipy/team-equaliser", "traction-scipy/team-sharing", "traction-scipy/team-spread"],
        ["shear-displacement"] = ["terramechanics-scipy/shear"],
        ["side-pull"] = ["traction-scipy/overturn", "traction-scipy/side-limit", "traction/side-slope"],
        ["sobol-indices"] = ["uncertainty-scipy/sobol-points"],
        ["soil-strength"] = ["ground/rating-signs", "ground/remoulding-test"],
        ["suction-allowance"] = ["resistance-scipy/breakout"],
        ["suction-dissipation"] = ["resistance-scipy/dissipation"],
        ["tackle"] = ["traction-scipy/tackle", "traction-scipy/block"],
        ["take-up"] = ["lines-scipy/take-up-in-time"],
        ["track"] = ["terramechanics-scipy/track"],
        ["track-pressure"] = ["ground-machines-scipy/track-pressure"],
        ["tracked-mobility"] = ["terramechanics-scipy/vci-tracks"],
        ["tracked-pull"] = ["traction-scipy/tracked-pull"],
        ["tyre-deflection"] = ["ground-machines-scipy/deflection"],
        ["tyre-size"] = ["machines/inch-size", "ground-machines-scipy/metric-size"],
        ["underbody"] = ["resistance-scipy/underbody"],
        ["vega-nieva"] = ["ground-machines-scipy/vega-nieva"],
        ["vti-fine-soil"] = ["terramechanics-scipy/vti-fine"],
        ["vti-sand"] = ["terramechanics-scipy/vti-sand"],
        ["wes-clay"] = ["terramechanics-scipy/wes-clay"],
        ["wheel-loads"] = ["ground-machines-scipy/wheel-loads", "ground-machines-scipy/pinned-axle"],
        ["wheeled-mobility"] = ["terramechanics-scipy/vci-wheels"],
        ["winch"] = ["traction-scipy/winch", "traction/winch-layers"],
        ["wire-bend"] = ["rigging-gear/bend", "rigging-gear/bend-factor"],
        ["wismer-luth"] = ["terramechanics-scipy/wismer-luth"],
    };

    private static string Docs => Path.Combine(AppContext.BaseDirectory, "docs", "models");

    public static TheoryData<string> Pages => [.. Directory.EnumerateFiles(Docs, "*.md").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_model_has_two_check_values_from_outside(string page)
    {
        Assert.True(Rows.TryGetValue(page, out var places), page + ": name its check rows here");
        var outside = 0;
        foreach (var place in places)
        {
            var slash = place.IndexOf('/', StringComparison.Ordinal);
            var rows = CheckValues.Load(place[..slash]).Where(r => string.Equals(r.Model, place[(slash + 1)..], StringComparison.Ordinal)).ToList();
            Assert.True(rows.Count > 0, page + ": no row " + place);
            outside += rows.Count(r => OutsideStandings.Contains(r.Standing, StringComparer.Ordinal));
        }

        Assert.True(outside >= 2, page + " has " + outside + " check values from outside");
    }

    [Fact]
    public void A_row_of_the_reference_library_names_its_script() =>
        Assert.All(CheckValues.Files.SelectMany(CheckValues.Load).Where(r => string.Equals(r.Standing, "reference library", StringComparison.Ordinal)), r => Assert.Contains("benchmarks/reference/", r.Authority, StringComparison.Ordinal));

    [Fact]
    public void Every_model_of_the_code_can_be_had_and_says_its_range()
    {
        foreach (var type in typeof(IModel).Assembly.GetTypes().Where(t => typeof(IModel).IsAssignableFrom(t) && t is { IsAbstract: false, IsInterface: false }))
        {
            var instances = type.GetProperties().Where(p => p.GetMethod is { IsStatic: true } && typeof(IModel).IsAssignableFrom(p.PropertyType)).Select(p => (IModel)p.GetValue(null)!).ToList();
            Assert.True(instances.Count > 0, type.Name + " has no instance");
            Assert.All(instances, m => Assert.All(m.Validity.Limits, l =>
            {
                Assert.True(l.Minimum <= l.Maximum, type.Name + " " + l.Symbol);
                Assert.False(string.IsNullOrWhiteSpace(l.Symbol) || string.IsNullOrWhiteSpace(l.Meaning), type.Name);
                Assert.Contains(l.Source, SourceCatalogue.All);
            }));
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_page_says_where_it_holds_and_how_well_it_stands(string page)
    {
        var text = File.ReadAllText(Path.Combine(Docs, page + ".md"));
        Assert.StartsWith("# ", text, StringComparison.Ordinal);
        Assert.Matches(new Regex("primary|secondary|reported|from memory|judgement|derived|common practice", RegexOptions.IgnoreCase, TimeSpan.FromSeconds(1)), text);
        var named = Regex.Matches(text, "`([A-Z][A-Za-z0-9]+)[.`]", RegexOptions.None, TimeSpan.FromSeconds(1)).Select(m => m.Groups[1].Value).ToList();
        var types = typeof(IModel).Assembly.GetExportedTypes().Select(t => t.Name).ToHashSet(StringComparer.Ordinal);
        Assert.True(named.Exists(types.Contains), page + " names no public type");
    }
}
