using Google.OrTools.Sat;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Model;

/// <summary>How many loads of a group are fed alone from a source, over a straight or a reversing lead.</summary>
internal sealed record SingleChoice(Source Source, LoadGroup Load, bool Reverses, IntVar Count);
