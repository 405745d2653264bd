using System.Text;
using CsCheck;
using Loadmark.Storage.History;
using Loadmark.Storage.Tests.Model;

namespace Loadmark.Storage.Tests;

/// <summary>Texts come back to the letter.</summary>
public sealed class TextTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly CancellationToken _token = TestContext.Current.CancellationToken;

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Any_text_packs_and_unpacks() => Texts.Any.Sample(text => Assert.Equal(text, TextPacking.Unpack(TextPacking.Pack(text))));

    [Fact]
    public void A_change_leads_from_one_text_to_the_other_and_back() =>
        Gen.Select(Gen.OneOf(Texts.Any, Texts.Lines), Gen.OneOf(Texts.Any, Texts.Lines)).Sample((before, after) =>
        {
            var change = TextChange.Between(before, after);
            Assert.Equal(after, change.Redo(before));
            Assert.Equal(before, change.Undo(after));
        });

    [Fact]
    public void A_change_in_one_place_keeps_that_place_only()
    {
        var before = string.Concat(Enumerable.Range(0, 500).Select(line => $"PD-{line}: {{ kind: analog drive }}\n"));
        Assert.Equal(new TextChange(before.IndexOf("PD-250", StringComparison.Ordinal) + 16, "analog drive", "digital"), TextChange.Between(before, before.Replace("PD-250: { kind: analog drive }", "PD-250: { kind: digital }", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_text_in_a_form_that_is_not_known_is_refused()
    {
        Assert.Throws<InvalidDataException>(() => TextPacking.Unpack([]));
        Assert.Throws<InvalidDataException>(() => TextPacking.Unpack([9, 1, 2]));
        Assert.Throws<InvalidDataException>(() => TextPacking.Unpack([0, 0xFF]));
        var packed = TextPacking.Pack(new string('a', 5000));
        Assert.Throws<InvalidDataException>(() => TextPacking.Unpack(packed[..^1]));
        Assert.Throws<InvalidDataException>(() => new TextChange(3, "b", "c").Redo("aaaaa"));
        Assert.Throws<InvalidDataException>(() => new TextChange(6, "", "c").Redo("aaaaa"));
    }

    [Fact]
    public async Task The_longest_text_is_kept_and_a_longer_one_refused_with_nothing_changed()
    {
        using var store = await _folder.OpenAsync();
        var longest = string.Concat(Enumerable.Range(0, RigStore.LongestText / 8).Select(number => $"{unchecked((uint)(number * 2654435761)):X8}"));
        Assert.Equal(RigStore.LongestText, Encoding.UTF8.GetByteCount(longest));
        var rig = await store.Rigs.AddAsync("long", longest, _token);
        rig = (await store.Rigs.SaveAsync(rig.Id, rig.Revision, "short", "", "cut", _token)).Rig!;
        rig = (await store.Rigs.UndoAsync(rig.Id, rig.Revision, _token)).Rig!;
        Assert.Equal(longest, rig.Text);

        await Assert.ThrowsAsync<ArgumentException>(() => store.Rigs.SaveAsync(rig.Id, rig.Revision, "longer", longest + "a", "grow", _token));
        await Assert.ThrowsAsync<ArgumentException>(() => store.Rigs.SaveAsync(rig.Id, rig.Revision, "zero\0", longest, "name", _token));
        await Assert.ThrowsAsync<ArgumentException>(() => store.Rigs.SaveAsync(rig.Id, rig.Revision, "half \uD83C", longest, "name", _token));
        await Assert.ThrowsAsync<ArgumentException>(() => store.Rigs.AddAsync("longer", longest + "é", _token));
        Assert.Equal(rig, Assert.Single([await store.Rigs.FindAsync(rig.Id, _token)]));
        Assert.Single(await store.Rigs.ListAsync(_token));
    }
}
