using CsCheck;
using Loadmark.Core.Collections;

namespace Loadmark.Core.Tests.Collections;

public sealed class UnionFindTests
{
    private const int Count = 12;

    /// <summary>Beside labels that are all rewritten at each join, the plain way to say the same.</summary>
    [Fact]
    public void Groups_are_those_of_plain_relabelling() =>
        Gen.Select(Gen.Int[0, Count - 1], Gen.Int[0, Count - 1]).Array[0, 20].Sample(joins =>
        {
            var forest = new UnionFind<int>();
            var labels = Enumerable.Range(0, Count).ToArray();
            foreach (var (one, other) in joins)
            {
                forest.Join(one, other);
                var (kept, gone) = (labels[one], labels[other]);
                labels = [.. labels.Select(label => label == gone ? kept : label)];
                Assert.Equal(labels, Enumerable.Range(0, Count).Select(forest.Find));
            }
        });

    [Fact]
    public void What_is_the_same_is_told_by_the_comparer()
    {
        var names = new UnionFind<string>(StringComparer.OrdinalIgnoreCase);
        names.Join("brick", "pack");
        names.Join("PACK", "adaptor");
        Assert.Equal("brick", names.Find("Adaptor"));
        names.Join("BRICK", "pack");
        Assert.Equal("brick", names.Find("pack"));
    }
}
