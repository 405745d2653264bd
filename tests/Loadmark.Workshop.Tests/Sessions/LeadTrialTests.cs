using CsCheck;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Workshop.Sessions;

namespace Loadmark.Workshop.Tests.Sessions;

/// <summary>A rig with other leads on trial is a rig.</summary>
public sealed class LeadTrialTests
{
    [Fact]
    public void Whatever_is_tried_the_rig_stays_whole_and_only_leads_and_headroom_change() =>
        Gen.Select(WiredRigGen.Rig(), Gen.Int[-1, 3], Gen.Int[1, 100].Nullable(), Gen.Int[0, 2], Gen.Int[0, 60].Nullable()).Sample(
            (rig, lead, length, wire, percent) =>
            {
                var trial = new LeadTrial(lead < 0 ? null : rig.Leads[lead].Id, length / 10.0, wire switch { 0 => null, 1 => "0.14 mm²", _ => "0.75 mm²" }, percent);
                var after = trial.Apply(rig);

                Assert.NotNull(WiredRig.Of(after)); // throws for what does not fit together
                Assert.Equal(percent is { } share ? share / 100m : rig.Headroom, after.Headroom);
                Assert.Equal(rig with { Headroom = null, Leads = [], Wired = null }, after with { Headroom = null, Leads = [], Wired = null });
                Assert.Equal(Bare(rig), Bare(after));
                if (trial.IsNothing)
                    Assert.Equal(rig, after);
                if (trial.Lead is { } id)
                    Assert.Equal(rig.Leads.Where(one => one.Id != id), after.Leads.Where(one => one.Id != id));
            },
            iter: 1000);

    [Fact]
    public void Plain_leads_become_a_lead_with_a_name_that_the_file_can_hold()
    {
        var rig = RigFileReader.Read(SmallRig.Text, "").Rig!;
        var after = new LeadTrial(null, 3, "0.14 mm²", null).Apply(rig);
        var lead = Assert.Single(after.Leads);
        Assert.Equal((LeadTrial.PlainName, LeadType.Straight, new Metres(3)), (lead.Id, lead.Type, lead.Length));
        Assert.All(after.Wired!.Value, feed => Assert.Equal(LeadTrial.PlainName, feed.Lead));
        Assert.Equal(after, RigFileReader.Read(RigFileWriter.Write(after), "").Rig);

        // Tried again, the same lead changes; there is no second one.
        Assert.Equal(new Metres(1), Assert.Single(new LeadTrial(null, 1, null, null).Apply(after).Leads).Length);
    }

    [Fact]
    public void A_chain_is_lengthened_to_its_first_plug()
    {
        var rig = RigFileReader.Read(File.ReadAllText(Repository.PathOf("examples", "chain-start.rig.yaml")), "").Rig!;
        var lead = Assert.Single(new LeadTrial("long chain", 5, null, null).Apply(rig).Leads);
        Assert.Equal((new Metres(5), new Metres(0.25m)), (lead.Tail, lead.Pitch));
    }

    [Fact]
    public void A_chain_that_has_the_name_of_plain_leads_does_not_get_a_twin()
    {
        var rig = RigFileReader.Read(SmallRig.Text, "").Rig! with { Leads = [new Lead { Id = LeadTrial.PlainName, Type = LeadType.DaisyChain, Plugs = 3 }] };
        Assert.NotNull(WiredRig.Of(new LeadTrial(null, 3, null, null).Apply(rig)));
    }

    private static IEnumerable<Feed> Bare(Rig rig) => (rig.Wired ?? []).Select(feed => feed with { Lead = null });
}
